package changeover.billing.ledger;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the journal moves, in words: a tax as the newest document that charged it says it, with the number under which it is
 * collected, or its place where it has none.
 */
@ApplicationScoped
public class AccountNames {

    /** Canada's own are called as their offices write them: one number serves them at every rate. */
    private static final Map<String, Wording> CANADIAN = Map.of(
            "gst", new Wording("GST", "TPS"),
            "hst", new Wording("HST", "TVH"),
            "qst", new Wording("QST", "TVQ"),
            "pst", new Wording("PST", "TVP"));

    @Inject
    AgroalDataSource datasource;

    /** The names as the documents give them now. */
    public record Names(Map<String, Wording> taxes) {

        public Names {
            taxes = Map.copyOf(taxes);
        }

        public Wording of(String role) {
            return AccountRole.of(role)
                    .map(AccountRole::wording)
                    .orElseGet(() -> taxes.getOrDefault(role, new Wording("Tax", "Taxe")));
        }
    }

    public Names now() {
        Map<String, Wording> taxes = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select distinct on (1) %s, t.code, t.label_en, t.label_fr, t.registration, t.region
                          from invoice_tax t order by 1, (t.percent > 0) desc, t.id desc""".formatted(AccountRole.OF_TAX));
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                Wording label = new Wording(row.getString(3), row.getString(4));
                Wording name = CANADIAN.getOrDefault(row.getString(2), label);
                taxes.put(row.getString(1), named(name, row.getString(5), row.getString(6)));
            }
            return new Names(taxes);
        } catch (SQLException cause) {
            throw new IllegalStateException("the names of the accounts could not be read", cause);
        }
    }

    private static Wording named(Wording name, @Nullable String number, String region) {
        if (number != null) {
            return new Wording(name.en() + " " + number, name.fr() + " " + number);
        }
        return new Wording(at(name.en(), region, Locale.CANADA), at(name.fr(), region, Locale.CANADA_FRENCH));
    }

    /** A place that has no name here is left out. */
    private static String at(String name, String region, Locale locale) {
        String place = Places.region(Words.in(locale), region);
        return place.equals(region) ? name : name + ", " + place;
    }
}
