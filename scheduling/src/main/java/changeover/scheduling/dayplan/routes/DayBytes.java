package changeover.scheduling.dayplan.routes;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.io.StreamCorruptedException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** How a travel day goes to the solver's process, and how the orders of its stops come back. */
final class DayBytes {
    /** Says that the day has been understood and the search has begun. */
    static final int BEGUN = 0x5e;

    private static final int ANSWER = 0x726f6164;

    private DayBytes() {}

    static void write(TravelDay day, DataOutput out) throws IOException {
        out.writeInt(day.drives().places());
        for (int from = 0; from < day.drives().places(); from++) {
            for (int to = 0; to < day.drives().places(); to++) {
                out.writeInt(day.drives().seconds(from, to));
            }
        }
        out.writeInt(day.turns().size());
        for (Turn turn : day.turns()) {
            write(turn.technician(), out);
            write(out, turn.base(), turn.from(), turn.until(), turn.room());
            write(turn.tickets(), out);
            Lunch lunch = turn.lunch();
            out.writeBoolean(lunch != null);
            if (lunch != null) {
                write(out, lunch.earliest(), lunch.latest(), lunch.seconds());
            }
        }
        out.writeInt(day.stops().size());
        for (Stop stop : day.stops()) {
            write(stop.visit(), out);
            write(out, stop.place(), stop.earliest(), stop.latest(), stop.seconds(), stop.load());
            write(stop.tickets(), out);
            Promised promised = stop.promised();
            out.writeBoolean(promised != null);
            if (promised != null) {
                write(promised.technician(), out);
                out.writeInt(promised.starts());
            }
        }
    }

    static TravelDay read(DataInput in) throws IOException {
        int places = in.readInt();
        int[][] drives = new int[places][];
        for (int from = 0; from < places; from++) {
            drives[from] = figures(in, places);
        }
        int crew = in.readInt();
        List<Turn> turns = new ArrayList<>();
        for (int number = 0; number < crew; number++) {
            turns.add(turn(in));
        }
        int count = in.readInt();
        List<Stop> stops = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            stops.add(stop(in));
        }
        return new TravelDay(turns, stops, Drives.of(drives));
    }

    private static Turn turn(DataInput in) throws IOException {
        UUID technician = id(in);
        int[] of = figures(in, 4);
        Set<String> tickets = words(in);
        @Nullable Lunch lunch = null;
        if (in.readBoolean()) {
            int[] hours = figures(in, 3);
            lunch = new Lunch(hours[0], hours[1], hours[2]);
        }
        return new Turn(technician, of[0], of[1], of[2], tickets, of[3], lunch);
    }

    private static Stop stop(DataInput in) throws IOException {
        UUID visit = id(in);
        int[] of = figures(in, 5);
        Set<String> tickets = words(in);
        Promised promised = in.readBoolean() ? new Promised(id(in), in.readInt()) : null;
        return new Stop(visit, of[0], of[1], of[2], of[3], tickets, of[4], promised);
    }

    static void writeOrders(List<int[]> orders, DataOutput out) throws IOException {
        out.writeInt(ANSWER);
        for (int[] order : orders) {
            out.writeInt(order.length);
            write(out, order);
        }
    }

    /** The stops of every turn in order; refused when they are not stops of the day, each at most once. */
    static List<int[]> readOrders(TravelDay day, DataInput in) throws IOException {
        if (in.readInt() != ANSWER) {
            throw new StreamCorruptedException("what came back is no answer");
        }
        List<int[]> orders = new ArrayList<>();
        boolean[] seen = new boolean[day.stops().size()];
        for (int turn = 0; turn < day.turns().size(); turn++) {
            int count = in.readInt();
            if (count < 0 || count > seen.length) {
                throw new StreamCorruptedException("a turn has a number of stops that the day does not have");
            }
            int[] order = figures(in, count);
            for (int stop : order) {
                if (stop < 0 || stop >= seen.length || seen[stop]) {
                    throw new StreamCorruptedException("a stop came back twice, or is none of the day's");
                }
                seen[stop] = true;
            }
            orders.add(order);
        }
        return orders;
    }

    private static void write(DataOutput out, int... figures) throws IOException {
        for (int figure : figures) {
            out.writeInt(figure);
        }
    }

    private static int[] figures(DataInput in, int count) throws IOException {
        int[] figures = new int[count];
        for (int number = 0; number < count; number++) {
            figures[number] = in.readInt();
        }
        return figures;
    }

    private static void write(UUID id, DataOutput out) throws IOException {
        out.writeLong(id.getMostSignificantBits());
        out.writeLong(id.getLeastSignificantBits());
    }

    private static UUID id(DataInput in) throws IOException {
        return new UUID(in.readLong(), in.readLong());
    }

    private static void write(Set<String> words, DataOutput out) throws IOException {
        out.writeInt(words.size());
        for (String word : words) {
            out.writeUTF(word);
        }
    }

    private static Set<String> words(DataInput in) throws IOException {
        int count = in.readInt();
        Set<String> words = new HashSet<>();
        for (int number = 0; number < count; number++) {
            words.add(in.readUTF());
        }
        return words;
    }
}
