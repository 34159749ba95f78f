package changeover.billing.runs;

import changeover.billing.invoices.NumberSeries;
import changeover.billing.invoices.NumberedKind;
import changeover.billing.periods.Periods;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;

/** A run bears a day that has come, and none before the last invoice's: numbers and days rise together. */
@ApplicationScoped
class RunDays {

    @Inject
    Today today;

    @Inject
    NumberSeries series;

    @Inject
    Periods periods;

    void check(LocalDate day) {
        if (day.isAfter(today.day())) {
            throw Refusal.of("run.day-to-come").at("day").thrown();
        }
        periods.check(day);
        series.refusal(NumberedKind.INVOICE, day).ifPresent(refusal -> {
            throw refusal.at("day").thrown();
        });
    }
}
