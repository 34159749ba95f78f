package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;

import changeover.web.AShop;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A home whose plan was sold today and whose first visit has its hour with the shop's technician. */
public final class PlannedVisit {

    private static final String FILE = """
            home,customer,phone,street,city,region,country,unit,kind,fits
            h,Anselm Birk,555-0131,9 Tannery Row,Port Ambrose,QC,CA,Filter,filter-slot,size=16x25x4; thickness=4
            h,Anselm Birk,555-0131,9 Tannery Row,Port Ambrose,QC,CA,Outdoor unit,outdoor-heat-pump,drive=inverter
            h,Anselm Birk,555-0131,9 Tannery Row,Port Ambrose,QC,CA,Drain,condensate,
            """;

    private PlannedVisit() {}

    private static final String UNREAD = """
            home,customer,phone,street,city,region,country,unit,kind,fits
            h,Anselm Birk,555-0131,9 Tannery Row,Port Ambrose,QC,CA,,,
            """;

    public static String home(AShop.Shop shop) {
        return home(shop, FILE);
    }

    /** A home whose machines are read at the first visit. */
    public static String unread(AShop.Shop shop) {
        return home(shop, UNREAD);
    }

    private static String home(AShop.Shop shop, String file) {
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body(file)
                .post(shop.api("imports/homes"))
                .then()
                .statusCode(200);
        return as(shop.owner()).get(shop.api("homes")).then().extract().path("[0].id");
    }

    public static String visit(AShop.Shop shop, String home) {
        LocalDate day = LocalDate.now(ZoneId.of("America/Toronto"));
        List<Map<String, Object>> all =
                as(shop.owner()).get(shop.api("tasks")).then().extract().path("");
        List<Map<String, String>> tasks = all.stream()
                .filter(task -> List.of("filter-slot", "outdoor-heat-pump", "condensate").stream()
                        .anyMatch(kind -> ((List<?>) task.get("kinds")).contains(kind)))
                .filter(task -> "none".equals(task.get("ticket")) && "technician".equals(task.get("who")))
                .map(task -> Map.of("task", (String) task.get("code")))
                .toList();
        String plan = id(send(
                        shop.owner(),
                        shop.api("plans"),
                        Map.of(
                                "code",
                                "two",
                                "nameEn",
                                "Two turns",
                                "nameFr",
                                "Deux saisons",
                                "visits",
                                2,
                                "price",
                                "249.00",
                                "onSaleFrom",
                                day.toString(),
                                "tasks",
                                tasks))
                .statusCode(201));
        String agreement = id(
                send(shop.owner(), shop.api("agreements"), Map.of("home", home, "plan", plan, "from", day.toString()))
                        .statusCode(201));
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
        send(
                        shop.owner(),
                        shop.api("visits/" + visits.getFirst() + "/appointment"),
                        Map.of("technician", shop.technician().toString(), "day", day.toString(), "starts", "08:30"))
                .statusCode(200);
        return visits.getFirst();
    }

    private static String id(io.restassured.response.ValidatableResponse answer) {
        return answer.extract().path("id");
    }
}
