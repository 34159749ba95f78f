package changeover.billing.documents;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The machines of a home become stickers: what fits, when it was last changed, when it is looked at next. */
@ApplicationScoped
public class TagSheets {

    private static final String CHANGED = """
            select h.equipment_id, max(h.day) filter (where t.act = 'replace'), max(h.day)
            from unit_history h
            left join visit_task t on t.tenant_id = h.tenant_id and t.id = h.visit_task_id
            where h.tenant_id = current_tenant() and h.home_id = ?::uuid and h.equipment_id is not null
            group by h.equipment_id
            """;
    private static final String NEXT = """
            select equipment_id, min(due) from (
              select equipment_id, due_on as due from household_task
              where tenant_id = current_tenant() and home_id = ?::uuid and done_on is null and due_on >= ?::date
              union all
              select t.equipment_id, coalesce(a.day, t.due_until - 1) from visit_task t
              join visit v on v.tenant_id = t.tenant_id and v.id = t.visit_id
              left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
              where t.tenant_id = current_tenant() and v.home_id = ?::uuid and t.due_until > ?::date
                and not exists (select 1 from visit_ending x where x.tenant_id = v.tenant_id and x.visit_id = v.id)) d
            where equipment_id is not null group by equipment_id
            """;

    @Inject
    AgroalDataSource database;

    @Inject
    Homes homes;

    @Inject
    CardSheets cards;

    @Inject
    OwnCatalogue catalogues;

    @Inject
    Businesses businesses;

    private record Days(
            @Nullable LocalDate changed, @Nullable LocalDate seen) {}

    /**
     * Empty when the business has no such home.
     *
     * @param only the machines to print; all of them when empty
     * @param link the address that the QR codes open: the home's own page
     */
    public Optional<TagSheet> of(UUID homeId, List<UUID> only, Locale language, LocalDate today, String link) {
        return homes.get(homeId).map(home -> sheet(home, only, Words.in(language), today, link));
    }

    private TagSheet sheet(Home home, List<UUID> only, Words words, LocalDate today, String link) {
        Map<UUID, Days> days = new HashMap<>();
        new Question(database, CHANGED)
                .all(
                        row -> days.put(
                                row.getObject(1, UUID.class),
                                new Days(row.getObject(2, LocalDate.class), row.getObject(3, LocalDate.class))),
                        home.id());
        Map<UUID, LocalDate> next = new HashMap<>();
        new Question(database, NEXT)
                .all(
                        row -> next.put(row.getObject(1, UUID.class), row.getObject(2, LocalDate.class)),
                        home.id(),
                        today,
                        home.id(),
                        today);
        Catalogue catalogue = catalogues.catalogue();
        List<TagSheet.Tag> tags = new ArrayList<>();
        for (Equipment machine : cards.machines(home)) {
            if (only.isEmpty() || only.contains(machine.id())) {
                Days past = days.getOrDefault(machine.id(), new Days(null, null));
                tags.add(tag(
                        machine, new UnitFacts(machine, catalogue, words), past, next.get(machine.id()), words, link));
            }
        }
        return new TagSheet(
                words.language(),
                businesses.current().name(),
                businesses.profile().facts().phone(),
                tags);
    }

    private static TagSheet.Tag tag(
            Equipment machine, UnitFacts facts, Days past, @Nullable LocalDate next, Words words, String link) {
        Figures figures = new Figures(words);
        List<CardSheet.Pair> shown = new ArrayList<>();
        LocalDate changed = past.changed();
        LocalDate seen = past.seen();
        if (changed != null) {
            shown.add(new CardSheet.Pair(words.say("tag.changed"), figures.day(changed)));
        } else if (seen != null) {
            shown.add(new CardSheet.Pair(words.say("tag.seen"), figures.day(seen)));
        }
        if (next != null) {
            shown.add(new CardSheet.Pair(words.say("tag.next"), figures.day(next)));
        }
        String serial = machine.facts().serial();
        if (serial != null && !serial.isBlank()) {
            shown.add(new CardSheet.Pair(words.say("unit-fact.serial"), serial));
        }
        String big = facts.big();
        return new TagSheet.Tag(
                machine.name(), big == null ? words.say("tag.to-be-read") : big, facts.air(), false, shown, link);
    }
}
