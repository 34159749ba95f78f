package changeover.deploy.bench;

import changeover.scheduling.dayplan.routes.Routes;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * A case of routes with hours in the format of M. M. Solomon (Operations Research 35, 1987): a name, the number of
 * vehicles and their room, then a line a place with its number, two coordinates, demand, ready time, due date and service
 * time; place 0 is the base.
 */
record SolomonFile(String name, int vehicles, int room, List<Place> places) {
    private static final int MOST = 100_000;

    /** One line of the file; everything but the coordinates is a whole number. */
    record Place(BigDecimal x, BigDecimal y, int demand, int ready, int due, int service) {}

    /** Why a text is no such case. */
    static final class NotInFormat extends Exception {
        private static final long serialVersionUID = 1;

        NotInFormat(String why) {
            super(why);
        }
    }

    SolomonFile {
        places = List.copyOf(places);
    }

    int customers() {
        return places.size() - 1;
    }

    /** The Euclidean distance in tenths, cut. */
    int tenths(int from, int to) {
        BigDecimal across = places.get(from).x().subtract(places.get(to).x());
        BigDecimal along = places.get(from).y().subtract(places.get(to).y());
        BigInteger square = across.multiply(across)
                .add(along.multiply(along))
                .movePointRight(2)
                .toBigInteger();
        return square.sqrt().intValueExact();
    }

    /** The case's figures in one number, to know it again whatever it is called. */
    String figures() {
        CRC32 sum = new CRC32();
        sum.update("%d %d\n".formatted(vehicles, room).getBytes(StandardCharsets.US_ASCII));
        for (int number = 0; number < places.size(); number++) {
            Place at = places.get(number);
            String line = "%d %s %s %d %d %d %d\n"
                    .formatted(
                            number,
                            at.x().toPlainString(),
                            at.y().toPlainString(),
                            at.demand(),
                            at.ready(),
                            at.due(),
                            at.service());
            sum.update(line.getBytes(StandardCharsets.US_ASCII));
        }
        return "%08x".formatted(sum.getValue());
    }

    static SolomonFile read(byte[] bytes) throws NotInFormat {
        List<String> lines = new String(bytes, StandardCharsets.UTF_8)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        int vehicle = lines.indexOf("VEHICLE");
        int customer = lines.indexOf("CUSTOMER");
        require(vehicle >= 1 && customer == vehicle + 3, "it has no name, VEHICLE and CUSTOMER in their places");
        List<BigDecimal> fleet = figures(lines.get(vehicle + 2), 2);
        List<Place> places = new ArrayList<>();
        for (String line : lines.subList(Math.min(lines.size(), customer + 2), lines.size())) {
            List<BigDecimal> of = figures(line, 7);
            require(
                    of.getFirst().compareTo(BigDecimal.valueOf(places.size())) == 0,
                    "its line \"%s\" should be number %d".formatted(line, places.size()));
            places.add(new Place(
                    of.get(1), of.get(2), whole(of.get(3)), whole(of.get(4)), whole(of.get(5)), whole(of.get(6))));
            require(
                    places.getLast().ready() <= places.getLast().due(),
                    "its line \"%s\" is due before it is ready".formatted(line));
        }
        require(places.size() > 1, "it has no customer");
        require(places.size() <= 2001, "it has more than 2000 customers");
        int vehicles = whole(fleet.getFirst());
        require(vehicles >= 1 && vehicles <= 2000, "its number of vehicles is not between 1 and 2000");
        return new SolomonFile(lines.getFirst(), vehicles, whole(fleet.getLast()), places);
    }

    private static List<BigDecimal> figures(String line, int count) throws NotInFormat {
        List<Optional<BigDecimal>> found =
                Stream.of(line.split("\\s+")).map(SolomonFile::figure).toList();
        require(
                found.size() == count && found.stream().allMatch(Optional::isPresent),
                "its line \"%s\" is not %d figures"
                        .formatted(line.length() > 90 ? line.substring(0, 90) + "…" : line, count));
        return found.stream().flatMap(Optional::stream).toList();
    }

    private static Optional<BigDecimal> figure(String word) {
        return word.matches("-?[0-9]{1,6}(\\.[0-9]{1,6})?") ? Optional.of(new BigDecimal(word)) : Optional.empty();
    }

    private static int whole(BigDecimal figure) throws NotInFormat {
        require(
                figure.stripTrailingZeros().scale() <= 0 && figure.signum() >= 0 && figure.intValue() <= MOST * 10,
                "its figure %s should be a whole number from 0".formatted(figure));
        return figure.intValueExact();
    }

    private static void require(boolean holds, String otherwise) throws NotInFormat {
        if (!holds) {
            throw new NotInFormat(otherwise);
        }
    }

    /** A case as it is shipped: the first 25 customers. */
    static SolomonFile shipped(String name) throws IOException, NotInFormat {
        try (var in = Routes.class.getResourceAsStream(name + ".25.txt")) {
            if (in == null) {
                throw new IOException("The shipped case " + name + " is missing.");
            }
            return read(in.readAllBytes());
        }
    }
}
