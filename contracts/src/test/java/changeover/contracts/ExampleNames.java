package changeover.contracts;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;

/** Names of nobody: given and family names, streets and rooms, by number. */
final class ExampleNames {

    private static final List<String> GIVEN_FR = List.of(
            "Anne",
            "Mathieu",
            "Élodie",
            "Gaëtan",
            "Noémie",
            "Cédric",
            "Solène",
            "Hugo",
            "Ariane",
            "Rémi",
            "Jeanne",
            "Ousmane",
            "Maïka",
            "Tristan",
            "Océane",
            "Bruno",
            "Yasmine",
            "Zacharie",
            "Fabienne",
            "Loïc");
    private static final List<String> FAMILY_FR = List.of(
            "Lafleur-Côté",
            "Desruisseaux",
            "Pépin",
            "Bellehumeur",
            "Tanguay",
            "Vadeboncœur",
            "Courtemanche",
            "Brisebois",
            "L’Heureux",
            "Sansregret",
            "Larochelle",
            "Diallo",
            "Beausoleil",
            "Ladouceur",
            "Quesnel",
            "Ouellet-Nadon",
            "Francœur",
            "Jolicœur",
            "Boisvert",
            "Archambeault",
            "Nguyen",
            "Haddad",
            "Tremblay-Roy");
    private static final List<String> GIVEN_EN = List.of(
            "Ruth", "Owen", "Marisol", "Desmond", "Hazel", "Tomas", "Edith", "Kwame", "Lena", "Harold", "Bea", "Arjun",
            "Moira", "Felix", "Nora", "Clyde", "Wanda", "Seamus", "Greta", "Amir");
    private static final List<String> FAMILY_EN = List.of(
            "Ashdown",
            "Pettibone",
            "Larkin",
            "O’Dell",
            "Merriwether",
            "Stroud",
            "Abernathy",
            "Vance",
            "Tolliver",
            "Quill",
            "Hartnell",
            "Mensah",
            "Birdsall",
            "Crane",
            "Fairweather",
            "Lund",
            "Ostrander",
            "Penhallow",
            "Rook",
            "Singh",
            "Thorne",
            "Wexley",
            "Yardley");
    private static final List<String> STREETS_FR = List.of(
            "rue de l’Église-Neuve",
            "rang des Érables-Tors",
            "chemin du Moulin-Brûlé",
            "rue des Tisserandes",
            "avenue du Cénacle",
            "montée Sainte-Rosée",
            "rue du Vieux-Quai",
            "rue Basse-Cour",
            "croissant des Mésanges",
            "rue de la Lisière",
            "boulevard du Belvédère",
            "rue Chaudronnier",
            "place des Cordiers");
    private static final List<String> STREETS_EN = List.of(
            "Tanner’s Row",
            "Old Mill Bend",
            "Saltbox Road",
            "Ferryman Street",
            "Coppice Avenue",
            "Larkrise Crescent",
            "Quarry Hill",
            "Weaver Street",
            "Lantern Court",
            "Bellfounder Lane",
            "St. Osyth Road",
            "Millrace Drive",
            "Hob Street");
    private static final List<String> ROOMS_FR = List.of("salon", "chambre", "bureau");
    private static final List<String> ROOMS_EN = List.of("living room", "bedroom", "study");

    private final boolean french;

    ExampleNames(boolean french) {
        this.french = french;
    }

    /** Every number has another name until twenty times twenty-three are used up; then they come again, numbered. */
    String person(int number) {
        List<String> given = french(number) ? GIVEN_FR : GIVEN_EN;
        List<String> family = french(number) ? FAMILY_FR : FAMILY_EN;
        int round = number / (given.size() * family.size());
        String name = given.get(number % given.size()) + " " + family.get(number % family.size());
        return round == 0 ? name : name + " " + (round + 1);
    }

    /** One customer in nine speaks the other language. */
    String language(int number) {
        return french(number) ? "fr" : "en";
    }

    private boolean french(int number) {
        return french == (number % 9 != 8);
    }

    String mail(String name, int number) {
        String plain = Normalizer.normalize(name.replace("œ", "oe"), Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT);
        return plain.replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", ".") + "." + number + "@example.com";
    }

    String street(int number, int house) {
        List<String> streets = french ? STREETS_FR : STREETS_EN;
        String street = streets.get(number % streets.size());
        int door = 3 + 2 * house + number / streets.size() * 400 / 100;
        return french ? door + ", " + street : door + " " + street;
    }

    /** The shop's own area, another door each time. */
    String postal(int number, String shops) {
        return shops.substring(0, 4) + (1 + number % 9) + (char) ('A' + number % 5) + (1 + number / 9 % 9);
    }

    String room(int number) {
        return (french ? ROOMS_FR : ROOMS_EN).get(number % 3);
    }
}
