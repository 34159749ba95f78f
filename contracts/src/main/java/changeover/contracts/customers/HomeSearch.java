package changeover.contracts.customers;

import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.query.NativeQuery;

/**
 * A home is found when every word asked for stands in its line of plain words, which the database keeps in
 * {@code home_search}; accents, capitals and the punctuation of telephones and serials do not matter. Homes where the
 * words asked for are or begin a word come first: number 2 before number 23 before number 12.
 */
@ApplicationScoped
class HomeSearch {

    private static final int MOST_WORDS = 8;

    private static final int LONGEST = 200;

    private static final String FOUND = """
            with asked as materialized (select %s)
            select h.id, h.key, h.street, h.unit_label, h.city, c.id as customer_id, c.name as customer, c.phone,
                   (select count(*) from equipment e
                     where (e.tenant_id, e.home_id) = (h.tenant_id, h.id) and e.ended_on is null) as units, h.to_be_read
              from (select h.tenant_id, h.id, h.key, h.street, h.unit_label, h.city, h.to_be_read, %s as rank
                      from asked, home_search s join home h on (h.tenant_id, h.id) = (s.tenant_id, s.id)
                     where s.tenant_id = current_tenant() %s
                       and not exists (select from home_merge m where m.tenant_id = h.tenant_id and m.other_id = h.id
                             and not exists (select from home_merge_undoing u
                               where u.tenant_id = m.tenant_id and u.merge_id = m.id))
                     order by rank desc, h.street, h.unit_label, h.id offset :from limit :count) h
              left join lateral (select c.id, c.name, c.phone
                      from home_part p join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
                     where (p.tenant_id, p.home_id) = (h.tenant_id, h.id) and p.from_day <= :day
                       and (p.until_day is null or p.until_day > :day)
                     order by array_position(array['lives', 'signs', 'pays', 'lets_in', 'gets_report'], p.part), p.from_day
                     limit 1) c on true
             order by h.rank desc, h.street, h.unit_label, h.id
            """;

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    List<FoundHome> find(String text, int from, int limit) {
        List<String> words = words(text);
        var said = new StringBuilder("1 as one");
        var rank = new StringBuilder("0");
        var holds = new StringBuilder();
        for (int index = 0; index < words.size(); index++) {
            said.append(", search_words(:word%d) as word%d".formatted(index, index));
            for (String end : List.of(" || '%' as int)", " || ' %' as int)")) {
                rank.append(" + cast(' ' || s.words || ' ' like '% ' || asked.word")
                        .append(index)
                        .append(end);
            }
            holds.append(" and s.words like '%' || asked.word").append(index).append(" || '%'");
        }
        var query = rows.createNativeQuery(FOUND.formatted(said, rank, holds), Tuple.class)
                .unwrap(NativeQuery.class)
                .setParameter("day", today.day())
                .setParameter("from", from)
                .setParameter("count", limit);
        for (int index = 0; index < words.size(); index++) {
            query.setParameter("word" + index, words.get(index));
        }
        var found = new ArrayList<FoundHome>();
        for (Object row : query.getResultList()) {
            found.add(home((Tuple) row));
        }
        return found;
    }

    private static FoundHome home(Tuple row) {
        return new FoundHome(
                row.get("id", UUID.class),
                row.get("key", String.class),
                row.get("street", String.class),
                row.get("unit_label", String.class),
                row.get("city", String.class),
                row.get("customer_id", UUID.class),
                row.get("customer", String.class),
                row.get("phone", String.class),
                row.get("units", Number.class).intValue(),
                row.get("to_be_read", Boolean.class));
    }

    /** The words asked for; a telephone number typed in groups is one word, without the country's 1. */
    private static List<String> words(String text) {
        String said = text.strip();
        String plain = said.substring(0, Math.min(said.length(), LONGEST)).replace("\u0000", "");
        String digits = plain.replaceAll("[^0-9]", "");
        if (digits.length() >= 7 && plain.matches("[0-9+(). \\-–]+")) {
            return List.of(digits.length() == 11 && digits.startsWith("1") ? digits.substring(1) : digits);
        }
        return List.of(plain.split("\\s+")).stream()
                .filter(word -> word.codePoints().anyMatch(Character::isLetterOrDigit))
                .limit(MOST_WORDS)
                .toList();
    }
}
