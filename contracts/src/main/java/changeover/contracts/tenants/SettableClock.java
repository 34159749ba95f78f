package changeover.contracts.tenants;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;

/** A clock that goes on ticking from whichever day it was set to; unset, it tells the real time. */
public class SettableClock extends Clock {

    private final Clock real;
    private final AtomicLong millisAhead;

    /** For the proxy. */
    protected SettableClock() {
        this(Clock.systemUTC());
    }

    public SettableClock(Clock real) {
        this(real, new AtomicLong());
    }

    private SettableClock(Clock real, AtomicLong millisAhead) {
        this.real = real;
        this.millisAhead = millisAhead;
    }

    /** Sets the day, at fifteen hours of universal time: late morning in the zones of the east. */
    public void setDay(LocalDate day) {
        millisAhead.set(
                Duration.between(real.instant(), day.atTime(LocalTime.of(15, 0)).toInstant(ZoneOffset.UTC))
                        .toMillis());
    }

    /** Back to the real time. */
    public void reset() {
        millisAhead.set(0);
    }

    public boolean isSet() {
        return millisAhead.get() != 0;
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return new SettableClock(real.withZone(zone), millisAhead);
    }

    @Override
    public Instant instant() {
        return real.instant().plusMillis(millisAhead.get());
    }
}
