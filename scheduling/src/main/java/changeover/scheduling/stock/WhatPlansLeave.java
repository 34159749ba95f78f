package changeover.scheduling.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import java.util.UUID;

/** What a home's plan still gives of a kind of part on a day, less what visits and posts took of it; who charges for parts answers. */
public interface WhatPlansLeave {

    /**
     * @param kind the kind of part as the plan names it
     * @param cap how many it gives in a year
     */
    record Left(UUID agreementId, String kind, BigDecimal cap, BigDecimal left) {}

    /** Of the first of these kinds that the plan in force gives; empty when none gives any of them. */
    Optional<Left> of(UUID home, Collection<String> kinds, LocalDate day);
}
