package changeover.billing.statements;

import changeover.billing.documents.DayInPaper;
import changeover.billing.documents.Documents;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.notices.FreeLetter;
import changeover.billing.notices.LettersToCustomers;
import changeover.billing.notices.LettersToCustomers.Addressed;
import changeover.billing.notices.Recipient;
import changeover.billing.payments.StatementsToCustomers;
import changeover.billing.payments.StatementsToCustomers.Theirs;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Makes statements of a period and sends them: to one customer, or to everybody whose balance moved in it or stands open at its
 * end. The same period is stated once a day to a customer.
 */
@ApplicationScoped
public class AccountStatements {

    @Inject
    AgroalDataSource datasource;

    @Inject
    StatementsToCustomers statements;

    @Inject
    LettersToCustomers letters;

    @Inject
    Documents documents;

    @Inject
    ObjectMapper json;

    @Inject
    Today today;

    /** A statement as it was made. */
    public record Made(UUID id, LocalDate from, LocalDate until, LocalDate day, Money closing) {}

    /** Whom a batch would go to, with what they owe at its end. */
    public Map<UUID, Money> whom(LocalDate from, LocalDate until) {
        return closings(statements.all(from, until));
    }

    private static Map<UUID, Money> closings(Map<UUID, Theirs> all) {
        Map<UUID, Money> whom = new LinkedHashMap<>();
        all.forEach((customer, theirs) -> {
            if (theirs.speaks()) {
                whom.put(customer, theirs.closing());
            }
        });
        return whom;
    }

    /**
     * Makes and sends a statement to each, its paper after the commit.
     *
     * @param until the last day, in
     * @param only these customers; empty for all that {@link #whom} names
     * @return how many were made; one that was made today already is left as it is
     */
    public int send(LocalDate from, LocalDate until, Set<UUID> only) {
        if (until.isBefore(from)) {
            throw Refusal.of("period.backwards").at("until").thrown();
        }
        if (until.isAfter(today.day())) {
            throw Refusal.of("statement.to-come").at("until").thrown();
        }
        Map<UUID, Theirs> all = statements.all(from, until);
        Set<UUID> customers = new LinkedHashSet<>(only.isEmpty() ? closings(all).keySet() : only);
        Map<UUID, Recipient> readers = letters.readers(customers);
        customers.removeAll(madeToday(from, until));
        ManyRows rows = ManyRows.into(
                "account_statement",
                "id uuid, customer_id uuid, from_day date, until_day date, day date, language text, currency text,"
                        + " opening_minor bigint, closing_minor bigint, lines json, buyer json,"
                        + " deposits_minor bigint");
        Map<Addressed, Function<String, FreeLetter>> words = new LinkedHashMap<>();
        List<Wanted> papers = new ArrayList<>();
        for (UUID customer : customers) {
            Recipient reader = readers.get(customer);
            Theirs moved = all.get(customer);
            if (reader != null && moved != null) {
                UUID id = Ids.next();
                add(rows, id, customer, reader, from, until, moved);
                Wanted paper = Wanted.of(PaperKind.STATEMENT, id);
                papers.add(paper);
                words.put(
                        new Addressed(customer, List.of(paper)), language -> letter(id, language, from, until, moved));
            }
        }
        try (Connection connection = datasource.getConnection()) {
            rows.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the statements could not be made", cause);
        }
        documents.order(papers);
        letters.write(words);
        return papers.size();
    }

    private void add(
            ManyRows rows, UUID id, UUID customer, Recipient reader, LocalDate from, LocalDate until, Theirs moved) {
        ArrayNode lines = json.createArrayNode();
        moved.rows().stream()
                .skip(1)
                .forEach(row -> lines.addObject()
                        .put("day", row.day().toString())
                        .put("what", row.what())
                        .put("said", row.said() == null ? "" : row.said())
                        .put("amount", row.amount().minor())
                        .put("balance", row.balance().minor()));
        ArrayNode buyer = json.createArrayNode().add(reader.name());
        reader.postal().forEach(buyer::add);
        Money closing = moved.closing();
        rows.add(
                id,
                customer,
                from,
                until,
                today.day(),
                reader.language(),
                closing.currency().getCurrencyCode(),
                moved.opening().minor(),
                closing.minor(),
                lines,
                buyer,
                moved.deposits().minor());
    }

    private static FreeLetter letter(UUID id, String language, LocalDate from, LocalDate until, Theirs theirs) {
        Locale locale = Locales.of(language);
        String days = DayInPaper.of(from, locale) + " – " + DayInPaper.of(until, locale);
        boolean french = locale.getLanguage().equals("fr");
        return new FreeLetter(
                "statement",
                id,
                (french ? "Votre relevé, " : "Your statement, ") + days,
                (french
                                ? "voici votre relevé, " + days + ". Il est ci-joint. "
                                : "here is your statement, " + days + ". It is attached. ")
                        + StatementWords.stands(theirs.closing(), locale)
                        + StatementWords.kept(theirs.deposits(), locale)
                        + (french ? "\n\nUne question? {answer}" : "\n\nA question? {answer}"));
    }

    /** The newest first; of one customer. */
    public List<Made> of(UUID customer) {
        List<Made> made = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select id, from_day, until_day, day, closing_minor, currency from account_statement
                         where customer_id = ? order by made_at desc limit 60""")) {
            select.setObject(1, customer);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                made.add(new Made(
                        row.getObject(1, UUID.class),
                        row.getObject(2, LocalDate.class),
                        row.getObject(3, LocalDate.class),
                        row.getObject(4, LocalDate.class),
                        Money.ofMinor(row.getLong(5), row.getString(6))));
            }
            return made;
        } catch (SQLException cause) {
            throw new IllegalStateException("the statements could not be listed", cause);
        }
    }

    /** Whose it is; null when there is no such statement. */
    public @Nullable UUID customerOf(UUID statement) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select =
                        connection.prepareStatement("select customer_id from account_statement where id = ?")) {
            select.setObject(1, statement);
            ResultSet row = select.executeQuery();
            return row.next() ? row.getObject(1, UUID.class) : null;
        } catch (SQLException cause) {
            throw new IllegalStateException("the statement could not be read", cause);
        }
    }

    private Set<UUID> madeToday(LocalDate from, LocalDate until) {
        Set<UUID> made = new HashSet<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(
                        "select customer_id from account_statement where from_day = ? and until_day = ? and day = ?")) {
            select.setObject(1, from);
            select.setObject(2, until);
            select.setObject(3, today.day());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                made.add(row.getObject(1, UUID.class));
            }
            return made;
        } catch (SQLException cause) {
            throw new IllegalStateException("the statements could not be read", cause);
        }
    }
}
