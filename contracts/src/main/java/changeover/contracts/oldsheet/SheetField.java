package changeover.contracts.oldsheet;

import changeover.contracts.words.Folded;
import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a column of an old spreadsheet may say of a home, and the titles by which it is often known. */
public enum SheetField {
    NAME(
            "Customer’s name",
            "Nom du client",
            "name|nom|client|customer|nom du client|customer name|client name|nom complet|full name|prenom|first name|last name|nom de famille"),
    PHONE(
            "Telephone",
            "Téléphone",
            "tel|telephone|phone|cell|cellulaire|mobile|no de telephone|no tel|phone number|numero de telephone|home phone"),
    EMAIL("E-mail", "Courriel", "email|e mail|courriel|mail|adresse courriel|email address"),
    LANGUAGE("Language", "Langue", "language|langue|lang|langue language|language langue"),
    STREET(
            "Street and number",
            "Numéro et rue",
            "address|adresse|street|rue|street address|adresse civique|no civique|numero civique|civic number"),
    UNIT_LABEL("Apartment", "Appartement", "apt|app|appartement|apartment|suite|logement"),
    CITY("City", "Ville", "city|ville|town|municipalite|municipality"),
    REGION("Province", "Province", "province|prov|region|state"),
    POSTAL("Postal code", "Code postal", "postal code|code postal|cp|c p|postal|zip"),
    NOTE("Note", "Note", "note|notes|remarks|remarques|remarque|comment|comments|commentaire|commentaires"),
    PLAN("Plan", "Formule", "plan|forfait|formule|contrat|contract|entente|agreement|type de contrat|contract type"),
    FIRST_DAY(
            "Agreement’s first day",
            "Premier jour de l’entente",
            "start|start date|debut|date de debut|contract start|debut du contrat|debut contrat|first day|premier jour"),
    PRICE(
            "Price of the year, before taxes",
            "Prix de l’année, avant taxes",
            "price|prix|prix annuel|annual price|montant|amount"),
    PAID("Paid, before taxes", "Payé, avant taxes", "paid|paye|amount paid|montant paye"),
    LAST_VISIT(
            "Last visit",
            "Dernière visite",
            "last visit|derniere visite|last service|dernier entretien|dernier service"),
    VISITS_DONE("Visits already done in the term", "Visites déjà faites dans l’entente", "visits done|visites faites"),
    OWED(
            "Still owed from before, taxes included",
            "Encore dû d’avant, taxes comprises",
            "owed|owing|balance|solde|du|solde du|balance due|a payer"),
    OWED_SINCE("Owed since", "Dû depuis", "owed since|du depuis|invoice date|date de facture"),
    KIND_1(1, "kind", "genre", Often.WORDS),
    MAKE_1(1, "make", "marque", Often.MAKES),
    MODEL_1(1, "model", "modèle", Often.MODELS),
    SERIAL_1(1, "serial number", "numéro de série", Often.SERIALS),
    INSTALLED_1(1, "installed on", "installé le", Often.DAYS),
    KIND_2(2, "kind", "genre", Often.WORDS),
    MAKE_2(2, "make", "marque", Often.MAKES),
    MODEL_2(2, "model", "modèle", Often.MODELS),
    SERIAL_2(2, "serial number", "numéro de série", Often.SERIALS),
    INSTALLED_2(2, "installed on", "installé le", Often.DAYS),
    KIND_3(3, "kind", "genre", Often.WORDS),
    MAKE_3(3, "make", "marque", Often.MAKES),
    MODEL_3(3, "model", "modèle", Often.MODELS),
    SERIAL_3(3, "serial number", "numéro de série", Often.SERIALS),
    INSTALLED_3(3, "installed on", "installé le", Often.DAYS);

    /** Machines that one line may name. */
    static final int MACHINES = 3;

    private static final class Often {
        static final String WORDS = "equipment|equipement|machine|appareil|type d appareil|systeme|system|unit|unite";
        static final String MAKES = "make|brand|marque|fabricant";
        static final String MODELS = "model|modele|no de modele";
        static final String SERIALS = "serial|serie|no de serie|serial number|numero de serie|serial no|no serie";
        static final String DAYS = "installed|installe|installation|date d installation|install date|annee|year";
    }

    private final int machine;
    private final Wording wording;
    private final List<String> titles;

    SheetField(String english, String french, String titles) {
        this(0, new Wording(english, french), titles);
    }

    SheetField(int machine, String english, String french, String titles) {
        this(
                machine,
                new Wording("Machine " + machine + ", " + english, "Appareil " + machine + ", " + french),
                titles);
    }

    SheetField(int machine, Wording wording, String titles) {
        this.machine = machine;
        this.wording = wording;
        this.titles = List.of(titles.split("\\|"));
    }

    /** As the form and the kept reading name it: {@code last-visit}, {@code kind-2}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Wording wording() {
        return wording;
    }

    /** Several columns may say it together: a name in two columns, a street and its number. */
    boolean joins() {
        return switch (this) {
            case NAME, PHONE, STREET, NOTE -> true;
            default -> false;
        };
    }

    static Optional<SheetField> of(String code) {
        return Arrays.stream(values())
                .filter(field -> field.code().equals(code))
                .findFirst();
    }

    static SheetField ofMachine(String what, int machine) {
        return valueOf(what + "_" + machine);
    }

    /** What a title most likely means, for a person to correct. */
    static Optional<SheetField> titled(String title) {
        String plain = Folded.of(title);
        return Arrays.stream(values()).filter(field -> field.knows(plain)).findFirst();
    }

    private boolean knows(String title) {
        return titles.stream()
                .anyMatch(known ->
                        title.equals(known) && machine <= 1 || machine > 0 && title.equals(known + " " + machine));
    }
}
