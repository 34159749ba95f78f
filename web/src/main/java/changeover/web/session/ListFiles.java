package changeover.web.session;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.money.Money;
import changeover.contracts.words.CsvTable;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Takes a list of the business out as a file, in one statement. */
@ApplicationScoped
public class ListFiles {

    /** How an amount of money is labelled; it stands in the currency of its row. */
    private static final String MINOR = "_minor";

    /** How the code of a ready sentence is labelled; it stands in its words. */
    private static final Map<String, Locale> SENTENCES =
            Map.of("sentence_en", Locale.ENGLISH, "sentence_fr", Locale.CANADA_FRENCH);

    @Inject
    AgroalDataSource datasource;

    @Inject
    OwnCatalogue catalogue;

    public byte[] take(ListFile list) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement ask = connection.prepareStatement(list.sql());
                ResultSet row = ask.executeQuery()) {
            ResultSetMetaData columns = row.getMetaData();
            String[] labels = new String[columns.getColumnCount()];
            for (int at = 0; at < labels.length; at++) {
                labels[at] = columns.getColumnLabel(at + 1);
            }
            Catalogue trade = catalogue.read().catalogue();
            var table = new CsvTable(Arrays.stream(labels)
                    .map(label -> label.endsWith(MINOR) ? label.substring(0, label.length() - MINOR.length()) : label)
                    .toArray(String[]::new));
            while (row.next()) {
                table.row(cells(row, labels, trade));
            }
            return table.bytes();
        } catch (SQLException cause) {
            throw new IllegalStateException("the list could not be taken out: " + list.code(), cause);
        }
    }

    private static @Nullable Object[] cells(ResultSet row, String[] labels, Catalogue trade) throws SQLException {
        @Nullable Object[] cells = new @Nullable Object[labels.length];
        for (int at = 0; at < labels.length; at++) {
            Object value = row.getObject(at + 1);
            Locale said = SENTENCES.get(labels[at]);
            if (value instanceof Long minor && labels[at].endsWith(MINOR)) {
                cells[at] = Money.ofMinor(minor, row.getString("currency")).amount();
            } else if (value instanceof String code && said != null) {
                cells[at] = trade.findSentence(code)
                        .map(sentence -> sentence.wording().in(said))
                        .orElse(code);
            } else {
                cells[at] = value instanceof Timestamp instant ? instant.toInstant() : value;
            }
        }
        return cells;
    }
}
