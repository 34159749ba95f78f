package changeover.contracts.oldsheet;

import java.nio.charset.Charset;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A spreadsheet as a shop keeps it for years: two languages in one column, three styles of days and more in words, missing
 * postal codes, telephones in every style, names typed twice, and some lines that nobody can read. Nobody in it exists.
 */
public final class AnUntidySheet {

    public static final int ROWS = 300;
    public static final int REPEATED = 12;
    public static final int BAD = 9;
    public static final int AGREEMENT_IN = 3;

    static final String TITLES =
            "Nom du client;Tél.;Courriel;Langue / Language;Adresse;App.;Ville;Prov.;Code postal;Appareil;Marque;Modèle;No de série;"
                    + "Installé;Contrat;Début;Prix;Payé;Dernière visite;Remarques";

    private static final List<String> FIRST = List.of(
            "Éloïse",
            "Gaëtan",
            "Maïka",
            "Solène",
            "Rémi",
            "Ruth",
            "Owen",
            "Hazel",
            "Desmond",
            "Edith",
            "Zacharie",
            "Noémie");
    private static final List<String> LAST = List.of(
            "Lafleur-Côté",
            "Vadeboncœur",
            "L’Heureux",
            "Brisebois",
            "Pépin",
            "Ashdown",
            "Pettibone",
            "Quill",
            "Fernsby",
            "Courtemanche");
    private static final List<String> STREETS = List.of(
            "rue des Érables",
            "chemin de la Côte",
            "rue Principale",
            "Tannery Row",
            "Kiln Lane",
            "av. du Moulin",
            "Mill Street",
            "boul. de l’Île");
    private static final List<String> CITIES = List.of("Sainte-Odette", "Val-Perdu", "Port Ambrose", "Lac-à-l’Aigle");
    private static final List<String> LANGUAGES =
            List.of("Français", "F", "fr", "English", "Anglais", "e", "FRANCOPHONE", "en ", "");
    private static final List<String> QUEBEC = List.of("Québec", "QC", "Qué.", "P.Q.", "");
    private static final List<String> ONTARIO = List.of("Ontario", "ON", "Ont.");
    private static final List<String> KINDS = List.of(
            "Fournaise au gaz",
            "Thermo murale",
            "Heat pump",
            "thermo murale ",
            "Gas furnace",
            "Échangeur",
            "?? voir",
            "");
    private static final List<String> PLANS = List.of("Or", "Deux saisons", "or ", "Gold");

    private final Random chance;
    private final LocalDate today;
    private final List<String> rows = new ArrayList<>();

    public AnUntidySheet(long seed, LocalDate today) {
        this.chance = new Random(seed);
        this.today = today;
        int repeated = 0;
        for (int at = 0; rows.size() < ROWS - BAD; at++) {
            String row = row(at);
            rows.add(row);
            if (at % 20 == 7 && repeated < REPEATED) {
                repeated++;
                rows.add(row.replace("rue ", "Rue  ").replace("Mill Street", "mill  street") + " ");
            }
        }
        bad();
    }

    public static int homes() {
        return ROWS - REPEATED - BAD;
    }

    public byte[] bytes() {
        return ("Clients du printemps;;\n" + TITLES + "\n" + String.join("\n", rows) + "\n")
                .getBytes(Charset.forName("windows-1252"));
    }

    private String row(int at) {
        boolean quebec = at % 4 != 0;
        boolean deal = at % AGREEMENT_IN == 0;
        String name = FIRST.get(at % 12) + " " + LAST.get(at / 12 % 10)
                + List.of("", "-Tarn", "-Fenn").get(at / 120) + (chance.nextInt(6) == 0 ? "  " : "");
        return String.join(
                ";",
                name,
                telephone(at),
                at % 3 == 0 ? "client" + at + "@example.com" : "",
                pick(LANGUAGES),
                (at + 1) + (chance.nextBoolean() ? ", " : " ") + pick(STREETS),
                at % 11 == 0 ? "apt " + at : "",
                pick(CITIES),
                quebec ? pick(QUEBEC) : pick(ONTARIO),
                at % 5 == 0 ? "" : quebec ? "j0x " + at % 10 + "y0" : "K0X0X" + at % 10,
                pick(KINDS),
                at % 2 == 0 ? "Norrland" : "",
                "",
                at % 2 == 0 ? "NX-" + at : "",
                at % 7 == 0 ? String.valueOf(2008 + at % 15) : "",
                deal ? pick(PLANS) : at % 2 == 0 ? "non" : "",
                deal ? day(today.minusDays(20 + at), at) : "",
                deal ? at % 2 == 0 ? "249,00 $" : "$249" : "",
                deal ? at % 2 == 0 ? "oui" : "100" : "",
                deal && at % 2 == 0 ? day(today.minusDays(10 + at / 4), at + 1) : "",
                at % 9 == 0 ? "\"Chien; sonner\"" : "");
    }

    private String telephone(int at) {
        String last = "555-01" + (10 + at % 90);
        return switch (at % 6) {
            case 0 -> "(819) " + last;
            case 1 -> "819." + last.replace('-', '.');
            case 2 -> "+1 819 " + last;
            case 3 -> "819 " + last + " poste " + (1 + at % 9);
            case 4 -> last;
            default -> "819" + last.replace("-", "") + " / 438 " + last;
        };
    }

    private String day(LocalDate day, int style) {
        return switch (style % 5) {
            case 0 -> day.toString();
            case 1 -> day.format(DateTimeFormatter.ofPattern("dd/MM/yyyy"));
            case 2 -> day.format(DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.CANADA_FRENCH));
            case 3 -> day.format(DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.ENGLISH));
            default -> day.format(DateTimeFormatter.ofPattern("dd-MM-yyyy"));
        };
    }

    /** Each with one fault of its own; mended by {@link #mended}. */
    private void bad() {
        String end = ";;;;;;;;;;;";
        rows.add("Ida Roe;819 555-0101;;les deux;901 Kiln Lane;;Port Ambrose;ON;" + end);
        rows.add("Ida Roe;819 555-0101;ida at example;en;902 Kiln Lane;;Port Ambrose;ON;" + end);
        rows.add("Ida Roe;819 555-0101;;en;903 Kiln Lane;;;ON;" + end);
        rows.add(";819 555-0101;;en;904 Kiln Lane;;Port Ambrose;ON;" + end);
        rows.add("Ida Roe;819 555-0101;;en;;;Port Ambrose;ON;" + end);
        rows.add("Ida Roe;819 555-0101;;en;906 Kiln Lane;;Port Ambrose;Vermont;" + end);
        rows.add("Ida Roe;819 555-0101;;en;907 Kiln Lane;;Port Ambrose;ON;;;;;;;Or;bientôt;;;;");
        rows.add("Ida Roe;819 555-0101;;en;908 Kiln Lane;;Port Ambrose;ON;;;;;;;Or;;249;;;");
        rows.add("Ida Roe;819 555-0101;;en;909 Kiln Lane;;Port Ambrose;ON;;;;;;;Or;" + today.minusDays(30)
                + ";1,000;;;");
    }

    /** What the office writes over the nine lines that came back. */
    public static String mended(String back) {
        return back.replace("les deux", "en")
                .replace("ida at example", "ida@example.com")
                .replace("903 Kiln Lane,,,", "903 Kiln Lane,,Port Ambrose,")
                .replace("\n\"\",819", "\nIda Roe,819")
                .replace("en,,,Port", "en,905 Kiln Lane,,Port")
                .replace("Vermont", "ON")
                .replace("Or,bientôt", "Or,2099-01-01")
                .replace("Or,,249", "Or,2099-01-01,249")
                .replace("\"1,000\"", "1000");
    }

    private String pick(List<String> some) {
        return some.get(chance.nextInt(some.size()));
    }
}
