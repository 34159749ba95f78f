package changeover.web.api;

import changeover.contracts.calendar.Window;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.FoundHome;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearsOfHomes;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Homes: found, read with their people and machines, and their year with every reason. */
@Path("/api/v1/{slug}/homes")
@RolesAllowed({"owner", "office"})
public class HomesApi {

    /** How many homes a search answers at most. */
    private static final int MOST = 200;

    /** A home with its people and machines. Keys and codes are not said here. */
    public record HomeDocument(
            UUID id,
            String home,
            String street,
            @Nullable String unit,
            String city,
            String region,
            @Nullable String postal,
            String country,
            String use,
            boolean toBeRead,
            List<PersonDocument> people,
            List<UnitDocument> units,
            int version) {}

    /** @param part signs, pays, lives, lets_in or gets_report */
    public record PersonDocument(
            UUID customer,
            String name,
            String part,
            LocalDate from,
            @Nullable LocalDate until) {}

    public record UnitDocument(
            UUID id,
            String unit,
            String kind,
            @Nullable String make,
            @Nullable String model,
            @Nullable String serial,
            @Nullable LocalDate installed,
            Map<String, String> fits,
            Map<String, String> nameplate) {}

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    @Inject
    AllEquipment equipment;

    @Inject
    YearsOfHomes years;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<FoundHome> find(
            @QueryParam("q") @DefaultValue("") String text,
            @QueryParam("from") @DefaultValue("0") int from,
            @QueryParam("count") @DefaultValue("50") int count) {
        String asked = text.length() > 100 ? text.substring(0, 100) : text;
        return homes.find(asked, Math.clamp(from, 0, 1_000_000), Math.clamp(count, 1, MOST));
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response one(@PathParam("id") UUID id) {
        Home home = homes.get(id).orElseThrow(NotFoundException::new);
        return Edition.of(document(home), home.version());
    }

    /** A new home: {@code street, city, region}, optionally {@code postal, country, unit, use, customer}. */
    @POST
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "homes " + body, () -> {
            Asked asked = Asked.of(body, json);
            var facts = new Home.Facts(
                    null,
                    asked.line("unit", 60),
                    asked.text("street", 200),
                    asked.text("city", 100),
                    asked.text("region", 10),
                    asked.line("postal", 20),
                    asked.value("country") == null ? businesses.current().country() : asked.text("country", 2),
                    degrees(asked, "latitude", 90),
                    degrees(asked, "longitude", 180),
                    asked.value("use") == null
                            ? "residential"
                            : asked.oneOf("use", Set.of("residential", "commercial")),
                    null,
                    asked.line("gettingIn", 4000),
                    asked.yes("toBeRead"));
            UUID customer = asked.idOrNone("customer");
            asked.nothingElse().understood();
            Home home = homes.add(facts);
            if (customer != null) {
                var _ = customers.get(customer).orElseThrow(NotFoundException::new);
                parts.beginAll(home.id(), customer, today.day());
            }
            return Once.Answer.made("/api/v1/" + slug + "/homes/" + home.id(), document(home));
        });
    }

    /** Twelve months from {@code from}, or from the first of the current month six months ago. */
    @GET
    @Path("{id}/year")
    @Transactional
    public YearDocument year(@PathParam("id") UUID id, @Nullable @QueryParam("from") String from) {
        var _ = homes.get(id).orElseThrow(NotFoundException::new);
        LocalDate day = today.day();
        LocalDate first = from == null ? day.withDayOfMonth(1).minusMonths(1) : AskedInQuery.day("from", from);
        LocalDate until = from == null ? first.plusMonths(14) : first.plusMonths(12);
        YearOfHome year = years.of(id, new Window(first, until), day);
        return YearDocument.of(year, businesses.current().locale());
    }

    private static @Nullable BigDecimal degrees(Asked asked, String member, long most) {
        return asked.value(member) == null
                ? null
                : asked.decimal(member, BigDecimal.valueOf(-most), BigDecimal.valueOf(most));
    }

    private HomeDocument document(Home home) {
        Home.Facts facts = home.facts();
        var played = parts.of(home.id());
        Map<UUID, String> names =
                customers
                        .all(played.stream()
                                .map(part -> part.customerId())
                                .distinct()
                                .toList())
                        .stream()
                        .collect(java.util.stream.Collectors.toMap(one -> one.id(), one -> one.name()));
        return new HomeDocument(
                home.id(),
                home.key(),
                facts.street(),
                facts.unitLabel(),
                facts.city(),
                facts.region(),
                facts.postal(),
                facts.country(),
                facts.propertyUse(),
                facts.toBeRead(),
                played.stream()
                        .map(part -> new PersonDocument(
                                part.customerId(),
                                names.getOrDefault(part.customerId(), ""),
                                part.part().code(),
                                part.from(),
                                part.until().orElse(null)))
                        .toList(),
                equipment.ofHome(home.id()).stream().map(HomesApi::unit).toList(),
                home.version());
    }

    private static UnitDocument unit(Equipment unit) {
        Equipment.Facts facts = unit.facts();
        return new UnitDocument(
                unit.id(),
                facts.name(),
                facts.kind(),
                facts.make(),
                facts.model(),
                facts.serial(),
                facts.installedOn(),
                facts.fits(),
                facts.nameplate());
    }
}
