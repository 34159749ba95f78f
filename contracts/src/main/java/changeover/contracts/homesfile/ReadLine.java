package changeover.contracts.homesfile;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One row, understood.
 *
 * @param unit null for a home whose machines are to be read at the first visit
 */
record ReadLine(Line line, HomeCells home, @Nullable UnitCells unit) {

    /** @param access the keys and codes that the row brings, by kind and label */
    record HomeCells(
            String key,
            String customer,
            String language,
            @Nullable String phone,
            @Nullable String email,
            String street,
            String city,
            String region,
            @Nullable String postal,
            String country,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude,
            List<Access> access) {}

    record Access(String kind, String label, String secret) {}

    record UnitCells(
            String name,
            String kind,
            @Nullable String make,
            @Nullable String model,
            @Nullable String serial,
            @Nullable LocalDate installed,
            Map<String, String> fits,
            Map<String, String> nameplate) {}
}
