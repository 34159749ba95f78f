package changeover.contracts.calendar;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Checks;
import changeover.contracts.words.FilledOn;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A business moves its seasons by its climate; promises name them by their code, which stays. */
@Entity
@Table(name = "season")
public class OwnSeason extends Owned {

    @Column(updatable = false)
    private String code = "";

    @Column(name = "name_en")
    private String nameEn = "";

    @Column(name = "name_fr")
    private String nameFr = "";

    @Column(name = "from_month")
    private int fromMonth = 1;

    @Column(name = "from_day")
    private int fromDay = 1;

    @Column(name = "until_month")
    private int untilMonth = 1;

    @Column(name = "until_day")
    private int untilDay = 1;

    private @Nullable String changeover;
    private @Nullable String basis;
    private int position;

    @Version
    private int version;

    /**
     * What is written of a season; both days are in it.
     *
     * @param changeover heating, cooling, or missing when nothing is changed over in it
     * @param basis what the days rest on; it may be missing only while they stand as they were shipped
     */
    public record Facts(
            String nameEn,
            String nameFr,
            int fromMonth,
            int fromDay,
            int lastMonth,
            int lastDay,
            @Nullable String changeover,
            @Nullable String basis) {

        static Facts of(Season season) {
            Changeover changeover = season.changeover();
            return new Facts(
                    season.nameEn(),
                    season.nameFr(),
                    season.first().getMonthValue(),
                    season.first().getDayOfMonth(),
                    season.last().getMonthValue(),
                    season.last().getDayOfMonth(),
                    changeover == null ? null : changeover.code(),
                    null);
        }
    }

    static OwnSeason write(String code, Facts facts, int position) {
        var season = new OwnSeason();
        var checks = new Checks();
        season.code = checks.line("code", code);
        checks.refuseIf(!season.code.matches("[a-z0-9-]{1,40}"), "code", "code.shape");
        season.position = position;
        season.say(facts, checks);
        return season;
    }

    /** Writes the season anew. Refused when somebody else did so since the form was filled. */
    void rewrite(Facts facts, FilledOn form) {
        form.mustBe(version);
        say(facts, new Checks());
    }

    private void say(Facts facts, Checks checks) {
        nameEn = checks.line("nameEn", facts.nameEn());
        nameFr = checks.line("nameFr", facts.nameFr());
        checks.refuseIf(!isDay(facts.fromMonth(), facts.fromDay()), "fromDay", "season.no-such-day");
        checks.refuseIf(!isDay(facts.lastMonth(), facts.lastDay()), "lastDay", "season.no-such-day");
        fromMonth = facts.fromMonth();
        fromDay = facts.fromDay();
        untilMonth = facts.lastMonth();
        untilDay = facts.lastDay();
        changeover = facts.changeover() == null
                ? null
                : checks.oneOf("changeover", facts.changeover(), List.of("heating", "cooling"));
        basis = checks.optionalLine("basis", facts.basis());
        boolean asShipped = isDay(fromMonth, fromDay)
                && isDay(untilMonth, untilDay)
                && Climate.isShipped(code, MonthDay.of(fromMonth, fromDay), MonthDay.of(untilMonth, untilDay));
        checks.refuseIf(basis == null && !asShipped, "basis", "season.basis");
        checks.orRefuse();
    }

    private static boolean isDay(int month, int day) {
        try {
            MonthDay.of(month, day);
            return true;
        } catch (DateTimeException noSuchDay) {
            return false;
        }
    }

    public Season season() {
        return new Season(
                code,
                nameEn,
                nameFr,
                MonthDay.of(fromMonth, fromDay),
                MonthDay.of(untilMonth, untilDay),
                changeover == null ? null : Changeover.ofCode(changeover));
    }

    public Facts facts() {
        return new Facts(nameEn, nameFr, fromMonth, fromDay, untilMonth, untilDay, changeover, basis);
    }

    public Optional<String> basis() {
        return Optional.ofNullable(basis);
    }

    public int version() {
        return version;
    }
}
