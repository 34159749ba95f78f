package changeover.contracts;

import changeover.contracts.Examples.Unit;
import changeover.contracts.catalogue.Catalogue;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Machines of invented makes, one for every kind that the catalogue knows. */
final class ExampleUnits {

    private final String language;
    private final Random random;
    private final ExampleMakes makes;

    ExampleUnits(String language, Random random) {
        this.language = language;
        this.random = random;
        this.makes = new ExampleMakes(random);
    }

    /** A machine of that kind. @param where added to the name when several of a kind stand in one home */
    Unit of(String kind, @Nullable String where, int year) {
        ExampleMakes.Sort sort = makes.of(kind);
        String name = Catalogue.shipped().kind(kind).wording().in(language) + (where == null ? "" : ", " + where);
        LocalDate installed = LocalDate.of(year, 1 + random.nextInt(12), 1 + random.nextInt(28));
        boolean plate = !sort.make().isEmpty();
        return new Unit(
                kind,
                name,
                plate ? sort.make() : null,
                plate ? sort.model() : null,
                plate ? serial(sort.make()) : null,
                where == null ? place(kind) : where,
                plate ? installed : null,
                plate
                        ? (random.nextInt(3) == 0 ? say("previous owner", "ancien propriétaire") : say("us", "nous"))
                        : null,
                plate ? installed.plusYears(10) : null,
                plate ? installed.plusYears(1) : null,
                plate && random.nextBoolean() ? "REG-" + (100_000 + random.nextInt(900_000)) : null,
                sort.fits(),
                sort.nameplate());
    }

    private String serial(String make) {
        return make.substring(0, 2).toUpperCase(Locale.ROOT) + (10 + random.nextInt(90)) + "-"
                + (100_000 + random.nextInt(900_000));
    }

    private String say(String en, String fr) {
        return language.equals("fr") ? fr : en;
    }

    private String place(String kind) {
        return switch (kind) {
            case "outdoor-heat-pump", "air-conditioner" -> say("north wall", "mur nord");
            case "rooftop-unit" -> say("roof", "toit");
            case "ductless-head" -> say("living room", "salon");
            case "co-alarm" -> say("upstairs hall", "couloir à l’étage");
            default -> say("basement", "sous-sol");
        };
    }
}
