package changeover.scheduling.dayplan.season;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An answer as it is kept on the way, a line a visit; what a search goes on from after a break. */
final class PlanText {

    private static final String NOBODY = "-";

    private PlanText() {}

    static String of(List<SeasonAnswer.Kept> kept) {
        return kept.stream()
                .map(one -> String.join(
                        " ",
                        one.visit().toString(),
                        one.technician().toString(),
                        one.second() == null ? NOBODY : one.second().toString(),
                        one.day().toString(),
                        String.valueOf(one.starts()),
                        String.valueOf(one.position())))
                .collect(Collectors.joining("\n"));
    }

    static List<SeasonAnswer.Kept> read(String text) {
        return text.lines().map(line -> line.split(" ")).map(PlanText::kept).toList();
    }

    private static SeasonAnswer.Kept kept(String[] said) {
        @Nullable UUID second = said[2].equals(NOBODY) ? null : UUID.fromString(said[2]);
        int starts = Integer.parseInt(said[4]);
        return new SeasonAnswer.Kept(
                UUID.fromString(said[0]),
                UUID.fromString(said[1]),
                second,
                false,
                LocalDate.parse(said[3]),
                starts,
                starts,
                0,
                Integer.parseInt(said[5]));
    }
}
