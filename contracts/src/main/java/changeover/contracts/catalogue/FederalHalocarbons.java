package changeover.contracts.catalogue;

import java.time.LocalDate;
import java.time.Month;

/**
 * Canada's federal halocarbon days: a circuit of more than 10 kg is leak tested in every calendar year and at most 15
 * months after the last test; a release of more than 10 kg and less than 100 kg is reported after its half-year.
 *
 * <p>Source: Federal Halocarbon Regulations, 2022 (SOR/2022-110), ss. 17 and 25; federal works, bodies and lands only.
 */
public final class FederalHalocarbons {

    private FederalHalocarbons() {}

    /** The last day of the next leak test. */
    public static LocalDate nextTest(LocalDate lastTest) {
        LocalDate yearEnd = LocalDate.of(lastTest.getYear() + 1, Month.DECEMBER, 31);
        LocalDate fifteenMonths = lastTest.plusMonths(15);
        return fifteenMonths.isBefore(yearEnd) ? fifteenMonths : yearEnd;
    }

    /** 31 July for the first half of the year, 31 January for the second. */
    public static LocalDate reportDue(LocalDate release) {
        return release.getMonthValue() <= 6
                ? LocalDate.of(release.getYear(), Month.JULY, 31)
                : LocalDate.of(release.getYear() + 1, Month.JANUARY, 31);
    }
}
