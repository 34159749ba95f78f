package changeover.billing.documents;

import changeover.contracts.words.RegionNames;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An address as it is written on paper: {@code Sainte-Odette (Québec)  J0X 0X0}, {@code Port Ambrose, Ontario  K0X 0X0}. */
public final class Places {

    private Places() {}

    /** The lines from the street on; what is empty is left out. */
    public static List<String> lines(
            Words words,
            @Nullable String unit,
            @Nullable String street,
            @Nullable String city,
            @Nullable String region,
            @Nullable String postal) {
        List<String> lines = new ArrayList<>();
        for (String line : (street == null ? "" : street).split("\\R")) {
            add(lines, line.strip());
        }
        if (unit != null && !unit.isBlank() && !lines.isEmpty()) {
            lines.set(0, lines.getFirst() + ", " + unit.strip());
        }
        String town = city == null ? "" : city.strip();
        String province = region(words, region);
        String place = town.isEmpty() || province.isEmpty()
                ? town + province
                : words.isFrench() ? town + " (" + province + ")" : town + ", " + province;
        String code = postal == null ? "" : postal.strip();
        add(lines, place.isEmpty() || code.isEmpty() ? place + code : place + "\u00a0 " + code);
        return lines;
    }

    /** The province's name in the paper's language; a place we have no name for stands as it was given. */
    public static String region(Words words, @Nullable String region) {
        if (region == null || region.isBlank()) {
            return "";
        }
        return RegionNames.of(region.strip()).in(words.isFrench() ? "fr" : "en");
    }

    private static void add(List<String> lines, String line) {
        if (!line.isEmpty()) {
            lines.add(line);
        }
    }
}
