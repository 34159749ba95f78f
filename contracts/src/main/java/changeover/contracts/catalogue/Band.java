package changeover.contracts.catalogue;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What a reading is expected to be: figures of the trade, or figures that follow from this machine's own plate. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "of")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Band.Fixed.class, name = "fixed"),
    @JsonSubTypes.Type(value = Band.Answer.class, name = "answer"),
    @JsonSubTypes.Type(value = Band.PlateTolerance.class, name = "plate-tolerance"),
    @JsonSubTypes.Type(value = Band.PlateRange.class, name = "plate-range"),
    @JsonSubTypes.Type(value = Band.ElementAmps.class, name = "element-amps"),
    @JsonSubTypes.Type(value = Band.ElementOhms.class, name = "element-ohms"),
    @JsonSubTypes.Type(value = Band.Imbalance.class, name = "imbalance")
})
public sealed interface Band {

    /** Between two figures in the reading's own unit, both in; a null end is open. */
    record Fixed(@Nullable BigDecimal low, @Nullable BigDecimal high) implements Band {}

    /** The answer that is good. */
    record Answer(boolean yes) implements Band {}

    /** The plate's figure, so many percent either way (a capacitor's microfarads, the supply's volts). */
    record PlateTolerance(String plate, BigDecimal percent) implements Band {}

    /** Between two figures of the plate, both in; a null name leaves that end open (not above the plate's amps). */
    record PlateRange(@Nullable String low, @Nullable String high) implements Band {}

    /**
     * The amps of a resistance element at the volts measured: R = V²/P from the plate, I = V measured / R, so many
     * percent either way.
     *
     * @param volts code of the reading that gives the volts measured
     */
    record ElementAmps(String kilowatts, String plateVolts, String volts, BigDecimal percent) implements Band {}

    /** The ohms of a resistance element, cold and isolated: V²/P from the plate, so many percent either way. */
    record ElementOhms(String kilowatts, String plateVolts, BigDecimal percent) implements Band {}

    /**
     * A flow within so many percent of another, by |S - E| / max(S, E): between O × (1 - p) and O ÷ (1 - p).
     *
     * @param with code of the reading of the other flow
     */
    record Imbalance(String with, BigDecimal percent) implements Band {}
}
