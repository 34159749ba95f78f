package changeover.web.office;

import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.HomePart;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.PartInHome;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Who is what to a home: each person once with all their parts, and every part that was ever played. */
@ApplicationScoped
public class PeopleOfHomes {

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    /**
     * Somebody and what they are to the home today.
     *
     * @param dial the telephone as a telephone dials it
     * @param parts the codes of their parts
     */
    public record Who(
            UUID customer,
            String name,
            @Nullable String phone,
            @Nullable String dial,
            @Nullable String email,
            String language,
            List<String> parts) {

        public boolean plays(String part) {
            return parts.contains(part);
        }
    }

    /** A part as it was played: first day, and last day or null while it lasts. */
    public record Played(
            UUID id,
            String part,
            UUID customer,
            String name,
            LocalDate from,
            @Nullable LocalDate last,
            @Nullable String purchaseOrder) {}

    /** Everybody of today, who signs first. */
    public List<Who> today(UUID home, LocalDate day) {
        Map<UUID, List<String>> played = new LinkedHashMap<>();
        List<HomePart> all = parts.on(home, day);
        for (PartInHome part : PartInHome.values()) {
            all.stream()
                    .filter(one -> one.part() == part)
                    .forEach(one -> played.computeIfAbsent(one.customerId(), none -> new ArrayList<>())
                            .add(part.code()));
        }
        Map<UUID, Customer> known = known(List.copyOf(played.keySet()));
        var people = new ArrayList<Who>();
        played.forEach((customer, codes) -> {
            Customer one = known.get(customer);
            if (one != null) {
                people.add(who(one, codes));
            }
        });
        return people;
    }

    private static Who who(Customer one, List<String> codes) {
        return new Who(
                one.id(),
                one.name(),
                one.phone().orElse(null),
                one.phone().map(PeopleOfHomes::dial).orElse(null),
                one.email().orElse(null),
                one.language(),
                List.copyOf(codes));
    }

    static String dial(String phone) {
        return phone.replaceAll("[^0-9+]", "");
    }

    /** Every part that was ever played in the home, those of today first, then the latest. */
    public List<Played> ever(UUID home, LocalDate day) {
        List<HomePart> all = parts.of(home);
        Map<UUID, Customer> known =
                known(all.stream().map(HomePart::customerId).distinct().toList());
        return all.reversed().stream()
                .sorted((a, b) -> Boolean.compare(b.isPlayedOn(day), a.isPlayedOn(day)))
                .map(part -> new Played(
                        part.id(),
                        part.part().code(),
                        part.customerId(),
                        known.containsKey(part.customerId())
                                ? known.get(part.customerId()).name()
                                : "",
                        part.from(),
                        part.until().map(until -> until.minusDays(1)).orElse(null),
                        part.purchaseOrder().orElse(null)))
                .toList();
    }

    private Map<UUID, Customer> known(List<UUID> ids) {
        return ids.isEmpty()
                ? Map.of()
                : customers.all(ids).stream().collect(Collectors.toMap(Customer::id, Function.identity()));
    }
}
