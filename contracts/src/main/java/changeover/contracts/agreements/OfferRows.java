package changeover.contracts.agreements;

import changeover.contracts.plans.PlanFacts;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.ManyRows;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Offers go into their tables many at a time: a season's renewals are ten thousand. */
final class OfferRows {

    private final ManyRows agreements = ManyRows.into(
            "agreement",
            "id uuid, number int, home_id uuid, signer_id uuid, payer_id uuid, plan_id uuid, plan_code text,"
                    + " plan_name_en text, plan_name_fr text, term_from date, term_until date, price_minor bigint,"
                    + " currency text, instalments int, visits int, discount_percent numeric, included_minutes int,"
                    + " covers_repairs boolean, language text, offered_on date, valid_until date, renews_id uuid,"
                    + " sold_tasks jsonb");
    private final ManyRows units = ManyRows.into("agreement_unit", "agreement_id uuid, equipment_id uuid");
    private final ManyRows promises = promises();
    private final ManyRows parts =
            ManyRows.into("agreement_part", "agreement_id uuid, part_kind text, quantity numeric");

    /** Offers of one season name the same few plans. */
    private final Map<PlanFacts, String> soldTasks = new IdentityHashMap<>();

    private OfferRows() {}

    /** Stores them under the numbers from {@code number} on; answers their ids in the same order. */
    static List<UUID> store(Connection connection, List<Offer> offers, int number) throws SQLException {
        var rows = new OfferRows();
        var ids = new ArrayList<UUID>(offers.size());
        int next = number;
        for (Offer offer : offers) {
            UUID id = Ids.next();
            ids.add(id);
            rows.add(id, next++, offer);
        }
        rows.agreements.store(connection);
        rows.units.store(connection);
        rows.promises.store(connection);
        rows.parts.store(connection);
        return List.copyOf(ids);
    }

    private void add(UUID id, int number, Offer offer) {
        agreements.add(
                id,
                number,
                offer.homeId(),
                offer.signerId(),
                offer.payerId(),
                offer.planId(),
                offer.plan().code(),
                offer.plan().name().en(),
                offer.plan().name().fr(),
                offer.term().from(),
                offer.term().until(),
                offer.price().minor(),
                offer.price().currency(),
                offer.plan().instalments(),
                offer.plan().visits(),
                offer.plan().discountPercent(),
                offer.plan().includedMinutes(),
                offer.plan().coversRepairs(),
                offer.language(),
                offer.offeredOn(),
                offer.validUntil(),
                offer.renewsId(),
                soldTasks.computeIfAbsent(offer.plan(), SoldTasks::write));
        offer.units().forEach(unit -> units.add(id, unit));
        add(promises, id, 0, offer.promises());
        offer.parts().forEach(part -> parts.add(id, part.partKind(), part.quantity()));
    }

    /** Room for what is promised machine by machine. */
    static ManyRows promises() {
        return ManyRows.into(
                "agreement_promise",
                "agreement_id uuid, equipment_id uuid, task_code text, cadence jsonb, who text, minutes int, basis text,"
                        + " position int");
    }

    static void add(ManyRows promises, UUID agreement, int first, List<Offer.Promised> said) {
        int position = first;
        for (Offer.Promised promised : said) {
            promises.add(
                    agreement,
                    promised.equipmentId(),
                    promised.taskCode(),
                    promised.cadence().json(),
                    promised.who().code(),
                    promised.minutes(),
                    promised.basis(),
                    position++);
        }
    }
}
