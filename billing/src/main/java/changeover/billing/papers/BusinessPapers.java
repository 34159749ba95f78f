package changeover.billing.papers;

import changeover.billing.documents.Documents;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.notices.FreeLetter;
import changeover.billing.notices.LettersToCustomers;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The papers of the current business and its people's tickets: kept with their file, told of in time, sent to customers. */
@ApplicationScoped
public class BusinessPapers {

    /** Bytes at most. */
    public static final int LARGEST = 5_000_000;

    private static final byte[] PDF = "%PDF-".getBytes(StandardCharsets.US_ASCII);

    private static final String IN_FORCE = """
            select p.id, p.kind, p.name, p.number, p.expires_on, p.remind_days, p.person_id, m.name as person, exists (select 1 from document d
                where d.tenant_id = p.tenant_id and d.of_kind = 'paper' and d.of_id = p.id) as file
              from business_paper p
              left join membership m on m.tenant_id = p.tenant_id and m.person_id = p.person_id
             where not exists (select 1 from business_paper_end e where e.tenant_id = p.tenant_id and e.paper_id = p.id)
             order by p.expires_on nulls last, p.name, p.id
            """;

    /**
     * @param person whose ticket it is; null for the business's own papers
     * @param expiresOn its last day; null where it has none
     */
    public record Facts(
            String kind,
            String name,
            @Nullable String number,
            @Nullable UUID person,
            @Nullable LocalDate expiresOn,
            int remindDays) {}

    /** To whom a paper was sent. */
    public record Sending(UUID paper, String customer, LocalDate day) {}

    @Inject
    EntityManager rows;

    @Inject
    Documents documents;

    @Inject
    LettersToCustomers letters;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    Today today;

    /** Those that were not put away, the first to end first. */
    @SuppressWarnings("unchecked")
    public List<BusinessPaper> all() {
        List<Tuple> found = rows.createNativeQuery(IN_FORCE, Tuple.class).getResultList();
        return found.stream()
                .map(row -> new BusinessPaper(
                        row.get("id", UUID.class),
                        row.get("kind", String.class),
                        row.get("name", String.class),
                        row.get("number", String.class),
                        row.get("person_id", UUID.class),
                        row.get("person", String.class),
                        row.get("expires_on", LocalDate.class),
                        row.get("remind_days", Integer.class),
                        row.get("file", Boolean.class)))
                .toList();
    }

    public Optional<BusinessPaper> find(UUID id) {
        return all().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** Those that are over or will be soon. */
    public List<BusinessPaper> runningOut(LocalDate day) {
        return all().stream().filter(one -> one.isSpokenOf(day)).toList();
    }

    /** @param file a PDF; empty where none is kept with it */
    public UUID add(Facts facts, byte[] file) {
        var checks = new Checks();
        String kind = checks.oneOf("kind", facts.kind(), BusinessPaper.KINDS);
        String name = checks.line("name", facts.name());
        String number = checks.optionalLine("number", facts.number());
        UUID person = facts.person();
        boolean ticket = kind.equals(BusinessPaper.TICKET);
        checks.refuseIf(ticket && (person == null || people.of(person).isEmpty()), "person", "paper.whose-ticket");
        checks.refuseIf(!ticket && person != null, "person", "paper.nobodys");
        checks.refuseIf(facts.remindDays() < 1 || facts.remindDays() > 365, "remindDays", "paper.remind-days");
        checks.refuseIf(file.length > 0 && !isPdf(file), "file", "paper.not-a-pdf");
        checks.refuseIf(file.length > LARGEST, "file", "paper.too-large");
        checks.orRefuse();
        UUID id = Ids.next();
        LocalDate expires = facts.expiresOn();
        rows.createNativeQuery("insert into business_paper (id, kind, name, number, person_id, expires_on, remind_days)"
                        + " values (:id, :kind, :name, cast(:number as text), cast(:person as uuid),"
                        + " cast(:expires as date), :days)")
                .setParameter("id", id)
                .setParameter("kind", kind)
                .setParameter("name", name)
                .setParameter("number", number)
                .setParameter("person", person == null ? null : person.toString())
                .setParameter("expires", expires == null ? null : expires.toString())
                .setParameter("days", facts.remindDays())
                .executeUpdate();
        if (file.length > 0) {
            documents.keepFile(
                    Wanted.of(PaperKind.PAPER, id), name, businesses.current().language(), file);
        }
        return id;
    }

    private static boolean isPdf(byte[] file) {
        return file.length > PDF.length && Arrays.equals(PDF, Arrays.copyOf(file, PDF.length));
    }

    /** It is put away, another one took its place; false where it was so already. */
    public boolean putAway(UUID id, LocalDate day) {
        boolean there = find(id).isPresent();
        if (there) {
            rows.createNativeQuery("insert into business_paper_end (paper_id, day) values (:paper, :day)")
                    .setParameter("paper", id)
                    .setParameter("day", day)
                    .executeUpdate();
        }
        return there;
    }

    /** Writes to a customer with the file attached. Refused for a paper that holds no more, or has no file. */
    public void send(UUID id, UUID customer) {
        BusinessPaper paper =
                find(id).orElseThrow(() -> Refusal.of("paper.unknown").thrown());
        if (!paper.file()) {
            throw Refusal.of("paper.no-file").thrown();
        }
        if (paper.isOver(today.day())) {
            throw Refusal.of("paper.is-over").thrown();
        }
        if (letters.readers(List.of(customer)).isEmpty()) {
            throw Refusal.of("paper.nobody").at("known").thrown();
        }
        UUID sending = Ids.next();
        rows.createNativeQuery("insert into business_paper_sent (id, paper_id, customer_id, day)"
                        + " values (:id, :paper, :customer, :day)")
                .setParameter("id", sending)
                .setParameter("paper", id)
                .setParameter("customer", customer)
                .setParameter("day", today.day())
                .executeUpdate();
        letters.write(Map.of(
                new LettersToCustomers.Addressed(customer, List.of(Wanted.of(PaperKind.PAPER, id))),
                language -> FreeLetter.ofPaper(language, sending, paper.name(), paper.expiresOn())));
    }

    /** Newest first. */
    @SuppressWarnings("unchecked")
    public List<Sending> sendings(int most) {
        List<Tuple> found =
                rows.createNativeQuery("""
                        select s.paper_id, c.name, s.day from business_paper_sent s
                          join customer c on c.tenant_id = s.tenant_id and c.id = s.customer_id
                         order by s.id desc""", Tuple.class).setMaxResults(most).getResultList();
        return found.stream()
                .map(row -> new Sending(
                        row.get("paper_id", UUID.class),
                        row.get("name", String.class),
                        row.get("day", LocalDate.class)))
                .toList();
    }
}
