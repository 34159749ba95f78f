package changeover.contracts.catalogue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a reading is judged by besides its own value: the machine's nameplate and the other readings of the same task.
 *
 * @param nameplate as written, {@code volts=240}; what is no number is left out
 */
public record Circumstances(Map<String, BigDecimal> nameplate, Map<String, Measure> readings) {

    public static final Circumstances NONE = new Circumstances(Map.of(), Map.of());

    public Circumstances {
        nameplate = Map.copyOf(nameplate);
        readings = Map.copyOf(readings);
    }

    public static Circumstances of(Map<String, String> nameplate, Map<String, Measure> readings) {
        return new Circumstances(
                nameplate.entrySet().stream()
                        .flatMap(fact ->
                                number(fact.getValue()).map(number -> Map.entry(fact.getKey(), number)).stream())
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
                readings);
    }

    Optional<BigDecimal> plate(String name) {
        return Optional.ofNullable(nameplate.get(name));
    }

    Optional<BigDecimal> reading(String code, UnitOfMeasure unit) {
        return Stream.ofNullable(readings.get(code))
                .filter(measure -> measure.unit().convertsTo(unit))
                .map(measure -> measure.in(unit))
                .findFirst();
    }

    private static Optional<BigDecimal> number(String written) {
        String plain = written.strip().replace(',', '.');
        return plain.matches("-?\\d{1,9}(\\.\\d{1,6})?") ? Optional.of(new BigDecimal(plain)) : Optional.empty();
    }
}
