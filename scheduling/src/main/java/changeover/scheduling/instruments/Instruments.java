package changeover.scheduling.instruments;

import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The instruments of the current business that are in use. */
@ApplicationScoped
public class Instruments {

    private static final String IN_USE = """
            select i.id, i.name, i.serial, c.until_day, h.person_id, m.name as holder
              from instrument i
              left join lateral (select c.until_day from instrument_calibration c
                where c.tenant_id = i.tenant_id and c.instrument_id = i.id order by c.day desc, c.id desc limit 1) c on true
              left join lateral (select h.person_id from instrument_holder h
                where h.tenant_id = i.tenant_id and h.instrument_id = i.id order by h.id desc limit 1) h on true
              left join membership m on m.tenant_id = i.tenant_id and m.person_id = h.person_id
             where not exists (select 1 from instrument_end e where e.tenant_id = i.tenant_id and e.instrument_id = i.id)
             order by i.name, i.serial
            """;

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @SuppressWarnings("unchecked")
    public List<Instrument> all() {
        List<Tuple> found = rows.createNativeQuery(IN_USE, Tuple.class).getResultList();
        return found.stream()
                .map(row -> new Instrument(
                        row.get("id", UUID.class),
                        row.get("name", String.class),
                        row.get("serial", String.class),
                        row.get("until_day", LocalDate.class),
                        row.get("person_id", UUID.class),
                        row.get("holder", String.class)))
                .toList();
    }

    public Optional<Instrument> find(UUID id) {
        return all().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** Whether one of this id was ever known: a closure that comes late may name one that is in use no longer. */
    public boolean everKnown(UUID id) {
        return !rows.createNativeQuery("select 1 from instrument where id = :id")
                .setParameter("id", id)
                .getResultList()
                .isEmpty();
    }

    /** Those whose calibration is over or will be soon. */
    public List<Instrument> runningOut(LocalDate day) {
        return all().stream().filter(one -> one.isSpokenOf(day)).toList();
    }

    /** @param until the last day of its calibration; null where it has none */
    public UUID add(String name, String serial, @Nullable LocalDate until, LocalDate today) {
        var checks = new Checks();
        String called = checks.line("name", name);
        String numbered = checks.line("serial", serial);
        checks.orRefuse();
        UUID id = Ids.next();
        rows.createNativeQuery("insert into instrument (id, name, serial) values (:id, :name, :serial)")
                .setParameter("id", id)
                .setParameter("name", called)
                .setParameter("serial", numbered)
                .executeUpdate();
        if (until != null) {
            calibrated(id, until.isBefore(today) ? until : today, until);
        }
        return id;
    }

    /** It was calibrated on a day, until another. */
    public void calibrated(UUID id, LocalDate day, LocalDate until) {
        if (until.isBefore(day)) {
            throw Refusal.of("instrument.until-later").at("until").thrown();
        }
        rows.createNativeQuery("insert into instrument_calibration (instrument_id, day, until_day)"
                        + " values (:instrument, :day, :until)")
                .setParameter("instrument", id)
                .setParameter("day", day)
                .setParameter("until", until)
                .executeUpdate();
    }

    /** @param person null where it comes back to the shop */
    public void give(UUID id, @Nullable UUID person, LocalDate day) {
        if (person != null && people.of(person).filter(one -> one.worksOn(day)).isEmpty()) {
            throw Refusal.of("appointment.nobody").at("person").thrown();
        }
        rows.createNativeQuery("insert into instrument_holder (instrument_id, person_id, day)"
                        + " values (:instrument, cast(:person as uuid), :day)")
                .setParameter("instrument", id)
                .setParameter("person", person == null ? null : person.toString())
                .setParameter("day", day)
                .executeUpdate();
    }

    /** It is in use no longer; false where it was so already. */
    public boolean end(UUID id, LocalDate day) {
        boolean there = find(id).isPresent();
        if (there) {
            rows.createNativeQuery("insert into instrument_end (instrument_id, day) values (:instrument, :day)")
                    .setParameter("instrument", id)
                    .setParameter("day", day)
                    .executeUpdate();
        }
        return there;
    }
}
