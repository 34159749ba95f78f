package changeover.web.walls;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;

import changeover.billing.notices.OfferMail;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Seal;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A business in the middle of its year, with a row in every table: two technicians, two homes, papers, money, mail. */
@ApplicationScoped
public class ALivedInShop {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    People people;

    @Inject
    OwnersEyes eyes;

    @Inject
    OfferMail offers;

    @Inject
    Seal seal;

    /**
     * @param other a second technician, who has visits of their own
     * @param secret of the payer's link
     * @param calendar secret of the link to the home's visits
     * @param kept a form of the owner's that waits for them
     */
    public record Lived(
            AShop.Shop shop, UUID other, UUID home, UUID customer, String secret, String calendar, UUID kept) {}

    private Lived first;
    private Lived second;

    /** The business whose people reach out. */
    public synchronized Lived ours() {
        first = whole(first == null ? open("CA-QC", "fr") : first);
        return first;
    }

    /** The business that must not notice. */
    public synchronized Lived theirs() {
        second = whole(second == null ? open("CA-QC", "en") : second);
        return second;
    }

    /** What other trials have taken back in their own business is there again. */
    private Lived whole(Lived lived) {
        write(lived.shop(), "again.sql");
        return lived;
    }

    public Lived open(String region, String language) {
        AShop.Shop shop = shops.open(region, language);
        LocalDate day = LocalDate.now(ZoneId.of("America/Toronto"));
        UUID other = shops.in(
                shop,
                () -> people.add(Membership.begin(
                                UUID.randomUUID(),
                                "Rufus Ashe",
                                shop.slug() + "-r@example.com",
                                language,
                                Role.TECHNICIAN))
                        .personId());
        ALivedInHome.Lived lived = homes.sold(shop, language);
        write(shop, "before.sql");
        List<UUID> offered = eyes.values("agreement.id", shop.tenant()).stream()
                .map(UUID::fromString)
                .toList();
        shops.in(shop, () -> {
            offers.write(offered);
            return offered;
        });
        ALivedInHome.Lived second = homes.machines(shop, language);
        String home = second.home().toString();
        String plan = first(shop, "plan.id");
        String agreement = id(shop, "agreements", Map.of("home", home, "plan", plan, "from", day.toString()));
        send(
                        shop.owner(),
                        shop.api("agreements/" + agreement + "/acceptance"),
                        Map.of("by", "Anselm Birk", "channel", "counter"))
                .statusCode(200);
        List<String> visits = as(shop.owner())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .extract()
                .path("visits.id");
        appoint(shop, visits.get(0), shop.technician(), day, "08:30");
        appoint(shop, visits.get(1), other, day, "10:30");
        send(
                        shop.owner(),
                        shop.api("visits/" + visits.get(0) + "/closure"),
                        Map.of("others", "done", "minutes", 55, "receivedBy", "Anselm Birk"))
                .statusCode(200);
        as(shop.owner())
                .get(shop.api("visits/" + visits.get(0) + "/report.pdf"))
                .then()
                .statusCode(200);
        money(shop, agreement);
        String extra = openVisit(shop, lived.home().toString(), day);
        appoint(shop, extra, shop.technician(), day, "13:30");
        AVisitBegun.in(shop, lived.home(), day);
        write(shop, "after.sql");
        write(shop, "rest.sql");
        String secret = link(shop, "customers/" + second.customer() + "/link", "yours");
        String calendar = link(shop, "homes/" + lived.home() + "/calendar", "calendars");
        return new Lived(shop, other, lived.home(), lived.customer(), secret, calendar, keepForm(shop));
    }

    private void money(AShop.Shop shop, String agreement) {
        List<String> drafts = as(shop.owner())
                .queryParam("agreement", agreement)
                .get(shop.api("invoices"))
                .then()
                .extract()
                .path("id");
        String invoice = drafts.getFirst();
        send(shop.owner(), shop.api("invoices/" + invoice + "/issue"), Map.of()).statusCode(200);
        as(shop.owner()).get(shop.api("invoices/" + invoice + ".pdf")).then().statusCode(200);
        String customer = as(shop.owner())
                .get(shop.api("invoices/" + invoice))
                .then()
                .extract()
                .path("customer");
        for (String amount : List.of("100.00", "5.00")) {
            id(shop, "payments", Map.of("customer", customer, "amount", amount, "way", "cheque"));
        }
        send(
                        shop.owner(),
                        shop.api("payments/" + first(shop, "payment.id") + "/undoing"),
                        Map.of("how", "bounced", "why", "No funds"))
                .statusCode(200);
        String unwanted = id(shop, "credits", Map.of("invoice", invoice, "why", "By mistake"));
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID().toString())
                .header("If-Match", "\"0\"")
                .contentType("application/json")
                .body(Map.of("why", "Credited by mistake"))
                .post(shop.api("invoices/" + unwanted + "/discard"))
                .then()
                .statusCode(200);
        id(shop, "credits", Map.of("invoice", invoice, "why", "Goodwill"));
    }

    /** One visit more, which nobody has begun. */
    private String openVisit(AShop.Shop shop, String home, LocalDate day) {
        List<String> before = eyes.values("visit.id", shop.tenant());
        post(
                        shop.office(),
                        shop.at("homes/" + home + "/visits"),
                        Map.of(
                                "kind", "extra",
                                "first", day.toString(),
                                "last", day.plusDays(20).toString(),
                                "minutes", "60",
                                "note", "A look at the drain"))
                .statusCode(303);
        return eyes.values("visit.id", shop.tenant()).stream()
                .filter(visit -> !before.contains(visit))
                .findFirst()
                .orElseThrow();
    }

    static void appoint(AShop.Shop shop, String visit, UUID technician, LocalDate day, String starts) {
        send(
                        shop.owner(),
                        shop.api("visits/" + visit + "/appointment"),
                        Map.of("technician", technician.toString(), "day", day.toString(), "starts", starts))
                .statusCode(200);
    }

    /** The secret of a link that the office makes: the address is on the page once. */
    private String link(AShop.Shop shop, String page, String word) {
        return post(shop.office(), shop.at(page), Map.of("language", "en"))
                .statusCode(200)
                .extract()
                .asString()
                .replaceAll("(?s).*/" + word + "/([A-Za-z0-9_-]{43}).*", "$1");
    }

    /** A form of the owner's whose session had ended. */
    private UUID keepForm(AShop.Shop shop) {
        UUID id = UUID.randomUUID();
        String form = """
                {"action": "/%s/homes", "fields": [{"name": "writer", "value": "%s"},
                 {"name": "street", "value": "17 Ochre Lane"}]}""".formatted(shop.slug(), shop.owner());
        try (var connection = eyes.owner();
                var keep = connection.prepareStatement("insert into kept_form (id, sealed) values (?, ?)")) {
            keep.setObject(1, id);
            keep.setBytes(2, seal.close(form.getBytes(StandardCharsets.UTF_8), "kept forms"));
            keep.executeUpdate();
            return id;
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private String first(AShop.Shop shop, String column) {
        return eyes.values(column, shop.tenant()).getFirst();
    }

    private static String id(AShop.Shop shop, String path, Map<String, ?> document) {
        return send(shop.owner(), shop.api(path), document)
                .statusCode(201)
                .extract()
                .path("id");
    }

    /** Rows that no page of today writes, as the application's own role. */
    private void write(AShop.Shop shop, String file) {
        try (var text = ALivedInShop.class.getResourceAsStream("/walls/" + file);
                var connection = eyes.application(shop.tenant());
                var statement = connection.createStatement()) {
            if (text == null) {
                throw new IllegalStateException(file);
            }
            statement.execute(new String(text.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (SQLException cause) {
            throw new IllegalStateException(file, cause);
        }
    }
}
