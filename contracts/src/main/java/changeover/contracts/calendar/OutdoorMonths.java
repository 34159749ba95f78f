package changeover.contracts.calendar;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;

/**
 * The part of the year in which outdoor air is usually warm enough for readings that need it, as dated rows by place. A
 * business moves it as its season of warm months.
 *
 * @param place country and region as ISO 3166-2 writes them, {@code CA-QC}, a country alone, or empty for everywhere
 * @param from first day on which the row stands; a later row of the same place takes its place
 * @param celsius outdoor temperature that the days usually reach
 * @param first first day, in
 * @param last last day, in
 * @param basis what the days rest on, in words
 * @param source where that can be read
 */
public record OutdoorMonths(
        String place, LocalDate from, BigDecimal celsius, MonthDay first, MonthDay last, Wording basis, String source) {

    private static final List<OutdoorMonths> ROWS = read();

    public static List<OutdoorMonths> all() {
        return ROWS;
    }

    /** The row of the place on a day: the region's own before the country's, and that before everywhere's. */
    public static OutdoorMonths at(String place, LocalDate day) {
        return at(ROWS, place, day);
    }

    static OutdoorMonths at(List<OutdoorMonths> rows, String place, LocalDate day) {
        return rows.stream()
                .filter(row -> row.isOf(place) && !day.isBefore(row.from))
                .max(Comparator.comparingInt((OutdoorMonths row) -> row.place.length())
                        .thenComparing(OutdoorMonths::from))
                .orElseGet(() -> rows.stream()
                        .filter(row -> row.place.isEmpty())
                        .min(Comparator.comparing(OutdoorMonths::from))
                        .orElseThrow());
    }

    private boolean isOf(String where) {
        return place.isEmpty() || where.equals(place) || where.startsWith(place + "-");
    }

    /** The season with the days of this place. */
    Season of(Season season) {
        return new Season(season.code(), season.nameEn(), season.nameFr(), first, last, season.changeover());
    }

    private static List<OutdoorMonths> read() {
        var mapper = JsonMapper.builder()
                .addModule(new JavaTimeModule())
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .build();
        try (InputStream in = OutdoorMonths.class.getResourceAsStream("outdoor-months.json")) {
            if (in == null) {
                throw new IllegalStateException("the jar has no outdoor-months.json");
            }
            return List.copyOf(mapper.readValue(in, new TypeReference<List<OutdoorMonths>>() {}));
        } catch (IOException cause) {
            throw new UncheckedIOException("outdoor-months.json", cause);
        }
    }
}
