package changeover.billing.serving;

import changeover.billing.payments.LateOfHomes;
import changeover.billing.payments.OpenByAge;
import changeover.billing.reminders.Claiming;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the business decided for homes whose payer is late, by its rules or by a word about one customer. */
@ApplicationScoped
public class Servings {

    private static final String BY_THE_RULE = "rule";

    @Inject
    AgroalDataSource datasource;

    @Inject
    LateOfHomes lates;

    @Inject
    Claiming claiming;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** @param what serve, ask, not; or {@code rule}, by the rules again */
    public record Said(LocalDate day, String what, String why) {}

    /** What holds at each home of these where something is late or somebody said a word; the others are missing. */
    public Map<UUID, Word> at(Collection<UUID> homes, LocalDate day) {
        ServingRules rules = rules();
        List<LateOfHomes.Payer> payers = lates.payers(homes, day);
        List<UUID> customers =
                payers.stream().map(LateOfHomes.Payer::customerId).distinct().toList();
        Map<UUID, List<OpenByAge.Item>> late = late(customers, day);
        Map<UUID, Word> said = said(customers);
        Map<UUID, Word> words = new HashMap<>();
        for (LateOfHomes.Payer payer : payers) {
            Word own = said.get(payer.customerId());
            List<OpenByAge.Item> items = late.getOrDefault(payer.customerId(), List.of());
            if (own != null || !items.isEmpty()) {
                Word word = own == null ? byRule(rules, items, day) : own;
                words.merge(payer.homeId(), word, (one, other) -> one.compareTo(other) >= 0 ? one : other);
            }
        }
        return words;
    }

    /** What holds and kept money leave of what is late, due first. */
    private Map<UUID, List<OpenByAge.Item>> late(List<UUID> customers, LocalDate day) {
        List<OpenByAge.Item> late = lates.late(customers, day);
        return late.isEmpty()
                ? Map.of()
                : claiming.of(customers, day).of(late).stream()
                        .collect(Collectors.groupingBy(OpenByAge.Item::customerId));
    }

    private static Word byRule(ServingRules rules, List<OpenByAge.Item> late, LocalDate day) {
        Currency currency = late.getFirst().open().currency();
        Money sum = Money.sum(late.stream().map(OpenByAge.Item::open).toList(), currency);
        return rules.of(sum, (int) ChronoUnit.DAYS.between(late.getFirst().dueDay(), day));
    }

    public ServingRules rules() {
        Currency currency = businesses.current().currency();
        List<ServingRules.Rule> rules = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(
                        "select what, days_late, least_minor from serving_rule order by what")) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                rules.add(new ServingRules.Rule(
                        Word.of(row.getString(1)).orElseThrow(), row.getInt(2), new Money(row.getLong(3), currency)));
            }
            return new ServingRules(rules);
        } catch (SQLException cause) {
            throw new IllegalStateException("the rules of serving could not be read", cause);
        }
    }

    /** These rules hold from now on; a word that is not among them is never said by a rule. */
    public void rule(ServingRules rules) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement clear = connection.prepareStatement("delete from serving_rule");
                PreparedStatement insert = connection.prepareStatement(
                        "insert into serving_rule (what, days_late, least_minor) values (?, ?, ?)")) {
            clear.executeUpdate();
            for (ServingRules.Rule rule : rules.rules()) {
                insert.setString(1, rule.what().code());
                insert.setInt(2, rule.daysLate());
                insert.setLong(3, rule.least().minor());
                insert.executeUpdate();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the rules of serving could not be kept", cause);
        }
    }

    /** @param what null goes back to the rules */
    public void say(UUID customer, @Nullable Word what, String why) {
        if (why.strip().length() < 3) {
            throw Refusal.of("serving.why").at("why").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement(
                        "insert into serving_word (customer_id, day, what, why) values (?, ?, ?, ?)")) {
            insert.setObject(1, customer);
            insert.setObject(2, today.day());
            insert.setString(3, what == null ? BY_THE_RULE : what.code());
            insert.setString(4, why.strip());
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the word about the customer could not be kept", cause);
        }
    }

    /** What was said of a customer, the newest first. */
    public List<Said> of(UUID customer) {
        List<Said> said = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(
                        "select day, what, why from serving_word where customer_id = ? order by id desc")) {
            select.setObject(1, customer);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                said.add(new Said(row.getObject(1, LocalDate.class), row.getString(2), row.getString(3)));
            }
            return said;
        } catch (SQLException cause) {
            throw new IllegalStateException("the words about the customer could not be read", cause);
        }
    }

    private Map<UUID, Word> said(Collection<UUID> customers) {
        Map<UUID, Word> said = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select distinct on (customer_id) customer_id, what from serving_word
                         where customer_id = any (?) order by customer_id, id desc""")) {
            select.setArray(1, connection.createArrayOf("uuid", customers.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID customer = row.getObject(1, UUID.class);
                Optional<Word> word = Word.of(row.getString(2));
                word.ifPresent(one -> said.put(customer, one));
            }
            return said;
        } catch (SQLException cause) {
            throw new IllegalStateException("the words about customers could not be read", cause);
        }
    }
}
