package changeover.deploy.demo;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.households.FilterLooks;
import changeover.scheduling.households.FilterSlot;
import changeover.scheduling.households.FilterSlots;
import changeover.scheduling.households.HouseholdRounds;
import changeover.scheduling.households.SlotRhythms;
import changeover.scheduling.households.SlotSeen;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.PartsGiven;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.stock.WhatPlansLeave;
import changeover.scheduling.visits.HouseholdTasks;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Most households do their own part and say so; each house fills its filters at its own pace, and some never tell. */
@ApplicationScoped
class DemoHouseholds {

    private static final int OF_TEN = 8;
    private static final int POSTED = 4;

    @Inject
    CurrentTenant current;

    @Inject
    HouseholdTasks tasks;

    @Inject
    HouseholdRounds rounds;

    @Inject
    FilterSlots slots;

    @Inject
    SlotRhythms rhythms;

    @Inject
    Parts parts;

    @Inject
    PartsGiven given;

    @Inject
    WhatPlansLeave plans;

    @Inject
    StockPlaces places;

    /**
     * A transaction for each task.
     *
     * @param signers who tells, by home
     */
    void tell(UUID tenant, UUID office, LocalDate day, Map<UUID, String> signers) {
        for (HouseholdTasks.Open task : current.run(tenant, office, () -> tasks.openBy(day))) {
            if (Math.floorMod(task.homeId().hashCode(), 10) < OF_TEN) {
                current.run(tenant, office, () -> tell(task, signers.getOrDefault(task.homeId(), "Office")));
            }
        }
    }

    private void tell(HouseholdTasks.Open task, String by) {
        if (tasks.isOf(task.homeId(), task.id())) {
            rounds.done(task.homeId(), task.id(), telling(task, by));
        }
    }

    /** A few homes get the filter that their plan gives by post, between two visits. */
    void post(LocalDate day) {
        UUID shelf = places.shelf().orElseThrow().id();
        int posted = 0;
        for (FilterSlot slot : slots.all()) {
            Optional<KnownPart> part = Parts.fitting(parts.all(), "filter", slot.size());
            boolean left = part.isPresent()
                    && plans.of(slot.homeId(), List.of("filter"), day)
                            .filter(one -> one.left().signum() > 0)
                            .isPresent();
            if (left && posted < POSTED) {
                given.give(
                        UUID.randomUUID(),
                        slot.homeId(),
                        new KnownPart.Amount(part.get().code(), BigDecimal.ONE),
                        shelf,
                        PartsGiven.How.POSTED);
                posted++;
            }
        }
    }

    /** Half of them say how the filter looked. */
    private FilterLooks.Telling telling(HouseholdTasks.Open task, String by) {
        boolean replaced = task.act().equals("replace");
        UUID unit = task.equipmentId();
        Optional<FilterSlot> slot = unit == null ? Optional.empty() : slots.find(unit);
        if (slot.isEmpty() || Math.floorMod(task.homeId().getLeastSignificantBits(), 2) == 0) {
            return new FilterLooks.Telling(task.dueOn(), null, false, by);
        }
        SlotSeen seen = rhythms.seenOf(List.of(slot.get())).getFirst();
        long age = seen.lastChange()
                .map(told -> ChronoUnit.DAYS.between(told.look().day(), task.dueOn()))
                .orElse(0L);
        boolean grey = age >= life(slot.get(), task.dueOn());
        return new FilterLooks.Telling(task.dueOn(), grey ? "grey" : "clean", grey || replaced, by);
    }

    /** How many days a filter lasts in this home, a little longer or shorter each time. */
    private static long life(FilterSlot slot, LocalDate day) {
        long home = Math.floorMod(slot.id().hashCode(), 90);
        return slot.limits().capDays() / 3
                + home * slot.limits().capDays() / 150
                + Math.floorMod(day.hashCode(), 9)
                - 4;
    }
}
