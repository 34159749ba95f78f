package changeover.scheduling.intervals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Figures published elsewhere. */
class PosteriorOutsideTest {

    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3: 20 units, ten failures, ten taken out at 500 hours; maximum
     * likelihood shape 1.7208, characteristic life 606.5280 hours.
     */
    @Test
    void twenty_units_of_which_ten_were_taken_out_at_500_hours() {
        List<Seen> seen = new ArrayList<>();
        DoubleStream.of(54, 187, 216, 240, 244, 335, 361, 373, 375, 386)
                .forEach(hours -> seen.add(new Seen.GreyAt(hours / 24)));
        for (int unit = 0; unit < 10; unit++) {
            seen.add(new Seen.CleanAt(500.0 / 24));
        }
        Posterior posterior = Posterior.of(seen, Prior.FLAT);
        Weibull likeliest = posterior.mode();
        assertEquals(1.7208, likeliest.shape(), 0.00005);
        assertEquals(606.5280, likeliest.scaleDays() * 24, 0.0005);
        assertEquals(540.737, likeliest.meanDays() * 24, 0.0005);
        assertFalse(posterior.atTheEdge());
    }

    /** The exponential law (shape 1) and the Rayleigh law (shape 2) have means of 1 and √π/2 of the scale. */
    @Test
    void the_mean_of_two_old_laws() {
        assertEquals(10, new Weibull(1, 10).meanDays(), 1e-12);
        assertEquals(10 * Math.sqrt(Math.PI) / 2, new Weibull(2, 10).meanDays(), 1e-12);
        assertEquals(1 - Math.exp(-1), new Weibull(3.3, 10).greyBy(10), 1e-15);
    }
}
