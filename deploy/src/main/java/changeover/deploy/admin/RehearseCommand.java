package changeover.deploy.admin;

import changeover.deploy.launcher.Inside;
import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;

/** Lets the days of a rehearsal come one by one, and says what they brought. */
final class RehearseCommand implements AdminCommand {
    private static final String COUNTS =
            "select (select count(*) from visit), (select count(*) from invoice_issue), (select count(*) from outbox)";

    private record Counts(long visits, long invoices, long mails) {}

    @Override
    public String words() {
        return "rehearse";
    }

    @Override
    public String help() {
        return """
                Lets the days come one by one up to a day, on rehearsal data only.
                  deploy/admin rehearse --until DAY""";
    }

    @Override
    public int run(Running running, List<String> rest) throws SQLException, IOException, InterruptedException {
        Words words = new Words("rehearse", rest, Set.of());
        words.allow(Set.of("--until"));
        LocalDate until = day(words.needed("--until", "the day to come to, such as 2027-03-31"));
        if (!Inside.remembered(running.data(), "kind").equals("rehearsal")) {
            throw new Refusing(
                    "The folder " + running.data()
                            + " holds real work, whose days only pass by themselves; rehearse on one started with --rehearsal.");
        }
        LocalDate today = LocalDate.parse(Inside.remembered(running.data(), "rehearsal-day"));
        if (!until.isAfter(today)) {
            throw new Refusing("The rehearsal has come to " + today + " already.");
        }
        Counts before = counts(running);
        List<String> command = List.of("rehearse", today.plusDays(1).toString(), until.toString());
        if (Inside.run(running.data(), running.environment(), command) != 0) {
            return 1;
        }
        Inside.remember(running.data(), "rehearsal-day", until.toString());
        Counts after = counts(running);
        System.out.println("rehearsed days=%d visits=%d invoices=%d mails=%d"
                .formatted(
                        ChronoUnit.DAYS.between(today, until),
                        after.visits() - before.visits(),
                        after.invoices() - before.invoices(),
                        after.mails() - before.mails()));
        return 0;
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new Refusing("A day is written like 2027-03-31, not " + text + ".", e);
        }
    }

    private static Counts counts(Running running) throws SQLException {
        try (Connection owner = running.connect("owner");
                Statement statement = owner.createStatement();
                ResultSet row = statement.executeQuery(COUNTS)) {
            row.next();
            return new Counts(row.getLong(1), row.getLong(2), row.getLong(3));
        }
    }
}
