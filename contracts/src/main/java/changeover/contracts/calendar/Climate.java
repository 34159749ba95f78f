package changeover.contracts.calendar;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The seasons of one business, by its climate; a new business gets those of a cold climate and edits them. */
public record Climate(List<Season> seasons) {

    public static final String COOLING = "cooling";
    public static final String HEATING = "heating";
    public static final String SUMMER = "summer";
    public static final String WINTER = "winter";
    public static final String MIDWINTER = "midwinter";
    /** Closes with the cooling changeover, or a home sold in late June would owe a visit for it alone. */
    public static final String HUMIDIFIER_OFF = "humidifier-off";
    /** Outdoor air warm enough for a cooling reading, by place: see {@link OutdoorMonths}. */
    public static final String WARM = "warm";

    private static final Climate COLD = new Climate(List.of(
            season(COOLING, "cooling changeover", "passage à la climatisation", 4, 1, 6, 15, Changeover.COOLING),
            season(HEATING, "heating changeover", "passage au chauffage", 9, 1, 11, 15, Changeover.HEATING),
            season(SUMMER, "cooling season", "saison de climatisation", 6, 16, 8, 31, null),
            season(WINTER, "heating season", "saison de chauffage", 11, 16, 3, 31, null),
            season(MIDWINTER, "midwinter", "cœur de l’hiver", 1, 10, 2, 28, null),
            season(HUMIDIFIER_OFF, "humidifier shut-down", "arrêt de l’humidificateur", 5, 1, 6, 15, null),
            season(WARM, "warm months", "mois chauds", 5, 15, 9, 15, null)));

    public Climate {
        seasons = List.copyOf(seasons);
    }

    public static Climate cold() {
        return COLD;
    }

    /** What a business of a place begins with: the seasons of a cold climate, with the warm months of the place. */
    public static Climate at(String place, LocalDate day) {
        OutdoorMonths warm = OutdoorMonths.at(place, day);
        return new Climate(COLD.seasons.stream()
                .map(season -> season.code().equals(WARM) ? warm.of(season) : season)
                .toList());
    }

    /** Whether a season of that code is shipped with these days, to any place. */
    static boolean isShipped(String code, MonthDay first, MonthDay last) {
        return COLD.find(code)
                        .filter(one -> one.first().equals(first) && one.last().equals(last))
                        .isPresent()
                || code.equals(WARM)
                        && OutdoorMonths.all().stream()
                                .anyMatch(row ->
                                        row.first().equals(first) && row.last().equals(last));
    }

    public Optional<Season> find(String code) {
        return seasons.stream().filter(season -> season.code().equals(code)).findFirst();
    }

    /** The changeovers in the order of the year. */
    public List<Season> changeovers() {
        return seasons.stream().filter(season -> season.changeover() != null).toList();
    }

    private static Season season(
            String code,
            String en,
            String fr,
            int fromMonth,
            int fromDay,
            int lastMonth,
            int lastDay,
            @Nullable Changeover changeover) {
        return new Season(code, en, fr, MonthDay.of(fromMonth, fromDay), MonthDay.of(lastMonth, lastDay), changeover);
    }
}
