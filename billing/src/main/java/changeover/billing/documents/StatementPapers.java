package changeover.billing.documents;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Draws statements from their frozen rows, read together; the letterhead is read once for each language. */
@ApplicationScoped
class StatementPapers implements PaperSource {

    @Inject
    AgroalDataSource database;

    @Inject
    Letterheads letterheads;

    @Inject
    Businesses businesses;

    @Inject
    ObjectMapper json;

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.STATEMENT);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Map<UUID, List<StatementSheet>> sheets =
                sheets(wanted.stream().map(Wanted::ofId).toList());
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            List<StatementSheet> languages = sheets.get(one.ofId());
            if (languages != null) {
                drawn.put(one, Drawn.of(() -> paper(languages)));
            }
        }
        return drawn;
    }

    private static DrawnPaper paper(List<StatementSheet> sheets) {
        StatementSheet reader = sheets.getLast();
        String name = Words.in(reader.language()).say("statement.title") + "-" + reader.until();
        return DrawnPaper.pdf(name, reader.language().getLanguage(), StatementPdf.bytes(sheets));
    }

    private Map<UUID, List<StatementSheet>> sheets(List<UUID> ids) {
        Business business = businesses.current();
        Map<UUID, List<StatementSheet>> sheets = new LinkedHashMap<>();
        Map<Locale, Letterhead> heads = new HashMap<>();
        try (Connection connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select id, from_day, until_day, day, language, currency, opening_minor, closing_minor, lines, buyer,
                               deposits_minor
                          from account_statement where id = any (?)""")) {
            select.setArray(1, connection.createArrayOf("uuid", ids.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                StatementSheet sheet = sheet(row, heads);
                sheets.put(
                        row.getObject(1, UUID.class),
                        Tongues.of(business.country(), business.region(), sheet.language()).stream()
                                .map(language -> sheet.in(language, head(language, heads)))
                                .toList());
            }
            return sheets;
        } catch (SQLException | JsonProcessingException cause) {
            throw new IllegalStateException("the statements could not be read", cause);
        }
    }

    private StatementSheet sheet(ResultSet row, Map<Locale, Letterhead> heads)
            throws SQLException, JsonProcessingException {
        var language = Locales.of(row.getString(5));
        Currency currency = Currency.getInstance(row.getString(6));
        List<StatementSheet.Line> lines = new ArrayList<>();
        for (JsonNode line : json.readTree(row.getString(9))) {
            lines.add(new StatementSheet.Line(
                    LocalDate.parse(line.get("day").asText()),
                    line.get("what").asText(),
                    line.get("said").asText(),
                    new Money(line.get("amount").asLong(), currency),
                    new Money(line.get("balance").asLong(), currency)));
        }
        List<String> to = new ArrayList<>();
        json.readTree(row.getString(10)).forEach(line -> to.add(line.asText()));
        return new StatementSheet(
                language,
                head(language, heads),
                to,
                row.getObject(2, LocalDate.class),
                row.getObject(3, LocalDate.class),
                row.getObject(4, LocalDate.class),
                new Money(row.getLong(7), currency),
                lines,
                new Money(row.getLong(8), currency),
                new Money(row.getLong(11), currency));
    }

    private Letterhead head(Locale language, Map<Locale, Letterhead> heads) {
        return heads.computeIfAbsent(language, one -> letterheads.current(Words.in(one)));
    }
}
