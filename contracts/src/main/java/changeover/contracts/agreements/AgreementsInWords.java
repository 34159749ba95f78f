package changeover.contracts.agreements;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.PartKind;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What the agreements of the current business promise, in the words of its catalogue. */
@ApplicationScoped
public class AgreementsInWords {

    private static final String PROMISES = """
            select u.equipment_id, q.name, q.kind, p.task_code, cast(p.cadence as text) as cadence, p.who, p.minutes,
              p.basis
            from agreement_unit u
            join equipment q on q.tenant_id = u.tenant_id and q.id = u.equipment_id
            left join agreement_promise p on p.tenant_id = u.tenant_id and p.agreement_id = u.agreement_id
              and p.equipment_id = u.equipment_id
            where u.agreement_id = :agreement
            order by q.position, q.name, p.position
            """;

    private static final String PARTS =
            "select part_kind, quantity from agreement_part where agreement_id = :agreement order by part_kind";

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue trade;

    public AgreementDetails of(UUID agreementId) {
        OwnCatalogue.Own own = trade.read();
        Map<UUID, List<AgreementDetails.Promised>> promises = new LinkedHashMap<>();
        Map<UUID, Tuple> machines = new LinkedHashMap<>();
        for (Tuple row : ask(PROMISES, agreementId)) {
            UUID unit = row.get("equipment_id", UUID.class);
            machines.putIfAbsent(unit, row);
            List<AgreementDetails.Promised> of = promises.computeIfAbsent(unit, _ -> new ArrayList<>());
            if (row.get("task_code", String.class) != null) {
                of.add(promised(row, own));
            }
        }
        return new AgreementDetails(
                agreementId,
                machines.values().stream()
                        .map(row -> machine(row, own.catalogue(), promises))
                        .toList(),
                ask(PARTS, agreementId).stream()
                        .map(row -> part(row, own.catalogue()))
                        .toList());
    }

    @SuppressWarnings("unchecked")
    private List<Tuple> ask(String sql, UUID agreementId) {
        return rows.createNativeQuery(sql, Tuple.class)
                .setParameter("agreement", agreementId)
                .getResultList();
    }

    private static AgreementDetails.Machine machine(
            Tuple row, Catalogue catalogue, Map<UUID, List<AgreementDetails.Promised>> promises) {
        UUID unit = row.get("equipment_id", UUID.class);
        return new AgreementDetails.Machine(
                unit,
                row.get("name", String.class),
                catalogue
                        .findKind(row.get("kind", String.class))
                        .map(Kind::wording)
                        .orElse(null),
                promises.getOrDefault(unit, List.of()));
    }

    private static AgreementDetails.Promised promised(Tuple row, OwnCatalogue.Own own) {
        String code = row.get("task_code", String.class);
        Optional<Task> task = own.catalogue().findTask(code);
        return new AgreementDetails.Promised(
                code,
                task.map(Task::wording).orElse(new Wording(code, code)),
                Cadence.ofJson(row.get("cadence", String.class))
                        .sentence(own.seasons().climate()),
                Who.ofCode(row.get("who", String.class)),
                row.get("minutes", Integer.class),
                row.get("basis", String.class));
    }

    private static AgreementDetails.Part part(Tuple row, Catalogue catalogue) {
        String code = row.get("part_kind", String.class);
        return new AgreementDetails.Part(
                code,
                catalogue.findPart(code).map(PartKind::wording).orElse(new Wording(code, code)),
                row.get("quantity", BigDecimal.class));
    }
}
