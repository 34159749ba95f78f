package changeover.billing.documents;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.UnitOfMeasure;
import io.agroal.api.AgroalDataSource;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The readings of a visit in the unit they were read in, with the band turned into that unit. */
final class ReportReadings {

    private static final String SQL = """
            select e.name, t.task_code, t.wording_en, t.wording_fr, r.code, r.entered_value, r.entered_unit, r.unit,
              r.running_state, r.low, r.high, r.standing, r.visit_task_id, r.value, r.instrument, r.instrument_until, r.day
            from reading r
            join visit_task t on t.tenant_id = r.tenant_id and t.id = r.visit_task_id
            left join equipment e on e.tenant_id = r.tenant_id and e.id = r.equipment_id
            where r.tenant_id = current_tenant() and r.visit_id = ?::uuid
            order by e.position nulls last, e.name, t.position, r.id
            """;

    private final Catalogue catalogue;
    private final Words words;
    private final Figures figures;
    private final Map<UUID, Integer> findings;

    /** @param findings the number of the finding that a task's readings led to */
    ReportReadings(Catalogue catalogue, Words words, Map<UUID, Integer> findings) {
        this.catalogue = catalogue;
        this.words = words;
        this.figures = new Figures(words);
        this.findings = findings;
    }

    List<ReportSheet.Reading> of(AgroalDataSource database, UUID visit) {
        return new Question(database, SQL).all(this::read, visit);
    }

    private ReportSheet.Reading read(ResultSet row) throws SQLException {
        String code = row.getString(5);
        ReadingSpec spec = catalogue
                .findTask(row.getString(2))
                .flatMap(task -> task.reading(code))
                .orElse(null);
        String what = spec != null
                ? spec.wording().in(words.language())
                : words.isFrench() ? row.getString(4) : row.getString(3);
        ReportSheet.Standing standing = standing(row.getString(12));
        Integer finding = standing == ReportSheet.Standing.GOOD || standing == ReportSheet.Standing.NO_BAND
                ? null
                : findings.get(row.getObject(13, UUID.class));
        String typed = row.getString(6);
        String enteredCode = row.getString(7) == null ? row.getString(8) : row.getString(7);
        UnitOfMeasure unit =
                enteredCode == null ? null : UnitOfMeasure.find(enteredCode).orElse(null);
        UnitOfMeasure base = row.getString(8) == null
                ? null
                : UnitOfMeasure.find(row.getString(8)).orElse(null);
        BigDecimal value = row.getBigDecimal(14);
        if (value == null || unit == null || base == null) {
            return new ReportSheet.Reading(
                    row.getString(1), what, state(row, spec), said(typed), null, null, null, null, standing, finding);
        }
        BigDecimal shown = fewFigures(base.convert(value, unit));
        String symbol = symbol(unit);
        return new ReportSheet.Reading(
                row.getString(1),
                what,
                state(row, spec),
                figures.number(shown) + (symbol.isEmpty() ? "" : "\u00a0" + symbol),
                shown,
                symbol.isEmpty() ? null : symbol,
                in(row.getBigDecimal(10), base, unit),
                in(row.getBigDecimal(11), base, unit),
                standing,
                finding);
    }

    /** Yes and no in the reader's language; words as they were typed. */
    private String said(String typed) {
        return switch (typed) {
            case "yes", "no" -> words.say("answer." + typed);
            default -> typed;
        };
    }

    /** How the machine ran, and what it was taken with; said where its calibration was over. */
    private @Nullable String state(ResultSet row, @Nullable ReadingSpec spec) throws SQLException {
        String state = state(row.getString(9), spec);
        String instrument = row.getString(15);
        if (instrument == null) {
            return state;
        }
        LocalDate until = row.getObject(16, LocalDate.class);
        String with = words.say("reading.with", "instrument", instrument);
        String flag = until == null
                ? ", " + words.say("reading.never")
                : until.isBefore(row.getObject(17, LocalDate.class))
                        ? ", " + words.say("reading.over", "day", figures.day(until))
                        : "";
        return (state == null || state.isBlank() ? "" : state + ", ") + with + flag;
    }

    private @Nullable String state(@Nullable String kept, @Nullable ReadingSpec spec) {
        if (kept != null) {
            return kept;
        }
        return spec == null || spec.state() == null ? null : spec.state().in(words.language());
    }

    private String symbol(UnitOfMeasure unit) {
        return unit == UnitOfMeasure.OHM ? "ohm" : unit.symbol().in(words.language());
    }

    private static @Nullable BigDecimal in(@Nullable BigDecimal kept, UnitOfMeasure base, UnitOfMeasure unit) {
        return kept == null ? null : fewFigures(base.convert(kept, unit));
    }

    /** Four figures say enough; what was typed with fewer is not made longer. */
    private static BigDecimal fewFigures(BigDecimal value) {
        BigDecimal bare = value.setScale(Math.max(0, Math.min(6, value.scale())), RoundingMode.HALF_UP);
        int places = Math.max(0, 4 - (bare.precision() - bare.scale()));
        return bare.setScale(Math.min(places, 3), RoundingMode.HALF_UP).stripTrailingZeros();
    }

    private static ReportSheet.Standing standing(String code) {
        return switch (code) {
            case "within" -> ReportSheet.Standing.GOOD;
            case "below" -> ReportSheet.Standing.LOW;
            case "above" -> ReportSheet.Standing.HIGH;
            default -> ReportSheet.Standing.NO_BAND;
        };
    }
}
