package changeover.billing.reminders;

import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The ladder of the business, and whether its letters go by a person's yes or by themselves. */
@ApplicationScoped
public class Ladders {

    /** How reminders go out. */
    public enum How {
        NEVER,
        LIST,
        DAILY;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Inject
    AgroalDataSource datasource;

    /** A list with a yes until the business says otherwise. */
    public How how() {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("select how from reminder_way")) {
            ResultSet row = select.executeQuery();
            return row.next() ? How.valueOf(row.getString(1).toUpperCase(Locale.ROOT)) : How.LIST;
        } catch (SQLException cause) {
            throw new IllegalStateException("the way of reminding could not be read", cause);
        }
    }

    public void go(How how) {
        change(
                "insert into reminder_way (how) values (?)"
                        + " on conflict on constraint one_reminder_way do update set how = excluded.how",
                how.code());
    }

    /** The first step first; none until the business has set some. */
    public Ladder ladder() {
        List<Step> steps = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select days_late, tone, subject_en, subject_fr, body_en, body_fr, asks_fee
                          from reminder_step order by days_late""")) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                steps.add(new Step(
                        row.getInt(1),
                        Tone.of(row.getString(2)).orElseThrow(),
                        new Wording(row.getString(3), row.getString(4)),
                        new Wording(row.getString(5), row.getString(6)),
                        row.getBoolean(7)));
            }
            return new Ladder(steps);
        } catch (SQLException cause) {
            throw new IllegalStateException("the ladder could not be read", cause);
        }
    }

    /** Keeps a step; one that stands at the same number of days is rewritten. */
    public void keep(Step step) {
        if (!step.wrongs().isEmpty()) {
            throw new Refused(step.wrongs());
        }
        change(
                """
                insert into reminder_step (days_late, tone, subject_en, subject_fr, body_en, body_fr, asks_fee)
                values (?, ?, ?, ?, ?, ?, ?)
                on conflict on constraint one_step_a_day do update
                   set tone = excluded.tone, subject_en = excluded.subject_en, subject_fr = excluded.subject_fr,
                       body_en = excluded.body_en, body_fr = excluded.body_fr, asks_fee = excluded.asks_fee""",
                step.daysLate(),
                step.tone().code(),
                step.subject().en(),
                step.subject().fr(),
                step.body().en(),
                step.body().fr(),
                step.asksFee());
    }

    /** Takes a step off the ladder; what it wrote stays. */
    public boolean takeOff(int daysLate) {
        return change("delete from reminder_step where days_late = ?", daysLate) > 0;
    }

    private int change(String sql, Object... values) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement change = connection.prepareStatement(sql)) {
            for (int at = 0; at < values.length; at++) {
                change.setObject(at + 1, values[at]);
            }
            return change.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the ladder could not be changed", cause);
        }
    }
}
