package changeover.web.office;

import static changeover.web.AShop.as;

import changeover.web.AShop.Shop;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The form that corrects a closed visit, as the page shows it. */
final class AnAmendmentForm {

    private static final Pattern FIELD = Pattern.compile("name=\"(reading\\.([0-9a-f-]{36})\\.([^\"]+))\"");
    private static final Pattern QUANTITY = Pattern.compile("name=\"(quantity\\.[0-9a-f-]{36})\"");

    private AnAmendmentForm() {}

    /** The first task that asks for a number, and that number's code. */
    static String[] measured(Shop shop, String visit) {
        String card = as(shop.technician())
                .get(shop.at("field/visits/" + visit))
                .then()
                .extract()
                .asString();
        Matcher task = Pattern.compile("/tasks/([0-9a-f-]{36})").matcher(card);
        while (task.find()) {
            Matcher number = Pattern.compile("name=\"reading\\.([^\"]+)\" inputmode=\"decimal\"")
                    .matcher(as(shop.technician())
                            .get(shop.at("field/visits/" + visit + "/tasks/" + task.group(1)))
                            .then()
                            .extract()
                            .asString());
            if (number.find()) {
                return new String[] {task.group(1), number.group(1)};
            }
        }
        throw new AssertionError("no task of the visit asks for a number");
    }

    /** The form as the page shows it, to be sent back. */
    static Map<String, Object> of(Shop shop, String at) {
        String page = as(shop.office()).get(at).then().statusCode(200).extract().asString();
        var typed = new HashMap<String, Object>();
        for (String field : List.of(
                "made", "minutes", "extra", "extraWhy", "received", "note", "cameOn", "arrived", "left", "used")) {
            typed.put(field, value(page, field));
        }
        for (Pattern each : List.of(FIELD, QUANTITY)) {
            Matcher found = each.matcher(page);
            while (found.find()) {
                typed.put(found.group(1), value(page, found.group(1)));
            }
        }
        Matcher outcome = Pattern.compile("name=\"(outcome\\.[^\"]+)\" value=\"([a-z_]+)\" checked")
                .matcher(page);
        while (outcome.find()) {
            typed.put(outcome.group(1), outcome.group(2));
        }
        typed.put("level", "nothing");
        typed.put("machine", "");
        return typed;
    }

    static String value(String page, String field) {
        String name = "name=\"" + Pattern.quote(field) + "\"";
        Matcher chosen = Pattern.compile("<select[^>]*" + name + ".*?</select>", Pattern.DOTALL)
                .matcher(page);
        Matcher found = chosen.find()
                ? Pattern.compile("value=\"([^\"]*)\" selected").matcher(chosen.group())
                : Pattern.compile("<input[^>]*" + name + "[^>]*?value=\"([^\"]*)\"")
                        .matcher(page);
        return found.find() ? found.group(1) : "";
    }
}
