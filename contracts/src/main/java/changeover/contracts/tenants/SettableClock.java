package changeover.contracts.tenants;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that goes on ticking from whichever day it was set to; unset, it tells the real time. */
public class SettableClock extends Clock {

    private final Clock real;
    private final AtomicReference<Duration> ahead;

    /** For the proxy. */
    protected SettableClock() {
        this(Clock.systemUTC());
    }

    public SettableClock(Clock real) {
        this(real, new AtomicReference<>(Duration.ZERO));
    }

    private SettableClock(Clock real, AtomicReference<Duration> ahead) {
        this.real = real;
        this.ahead = ahead;
    }

    /** Sets the day, at fifteen hours of universal time: late morning in the zones of the east. */
    public void setDay(LocalDate day) {
        ahead.set(Duration.between(real.instant(), day.atTime(LocalTime.of(15, 0)).toInstant(ZoneOffset.UTC)));
    }

    /** Back to the real time. */
    public void reset() {
        ahead.set(Duration.ZERO);
    }

    public boolean isSet() {
        return !ahead.get().isZero();
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return new SettableClock(real.withZone(zone), ahead);
    }

    @Override
    public Instant instant() {
        return real.instant().plus(ahead.get());
    }
}
