package changeover.contracts.calendar;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The seasons of the current business, as it has moved them. */
@ApplicationScoped
public class Seasons {

    @Inject
    EntityManager rows;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Event<SeasonsMoved> moved;

    public List<OwnSeason> all() {
        return rows.createQuery("from OwnSeason order by position, code", OwnSeason.class)
                .getResultList();
    }

    public Climate climate() {
        return new Climate(all().stream().map(OwnSeason::season).toList());
    }

    /** What is shipped to the place of the business today. */
    public Climate shipped() {
        return Climate.at(place(), today.day());
    }

    /** Where the shipped warm months of the place come from. */
    public OutdoorMonths warmMonths() {
        return OutdoorMonths.at(place(), today.day());
    }

    private String place() {
        return businesses.current().place();
    }

    public OwnSeason add(String code, OwnSeason.Facts facts) {
        return store(OwnSeason.write(code, facts, all().size() + 1));
    }

    void begin(Climate climate) {
        int position = 1;
        for (Season season : climate.seasons()) {
            store(OwnSeason.write(season.code(), OwnSeason.Facts.of(season), position++));
        }
    }

    private OwnSeason store(OwnSeason season) {
        rows.persist(season);
        stored();
        return season;
    }

    private void stored() {
        rows.flush();
        moved.fire(new SeasonsMoved(current.id()));
    }

    /** Writes a season anew; empty when there is none of that id here. */
    public Optional<OwnSeason> rewrite(UUID id, OwnSeason.Facts facts, FilledOn form) {
        Optional<OwnSeason> found = get(id);
        found.ifPresent(season -> {
            season.rewrite(facts, form);
            stored();
        });
        return found;
    }

    /** Forgets a season of the business's own; false when there is none. Refused for one that shipped tasks name. */
    public boolean remove(UUID id) {
        Optional<OwnSeason> found = get(id);
        found.ifPresent(season -> {
            if (Climate.cold().find(season.season().code()).isPresent()) {
                throw Refusal.of("season.shipped").thrown();
            }
            rows.remove(season);
            stored();
        });
        return found.isPresent();
    }

    public Optional<OwnSeason> find(UUID id) {
        return Optional.ofNullable(rows.find(OwnSeason.class, id));
    }

    private Optional<OwnSeason> get(UUID id) {
        return Optional.ofNullable(rows.find(OwnSeason.class, id, LockModeType.PESSIMISTIC_WRITE));
    }
}
