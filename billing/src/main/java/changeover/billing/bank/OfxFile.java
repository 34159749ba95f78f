package changeover.billing.bank;

import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the statements of an Open Financial Exchange file, 1.x (SGML, whose single values need no end tag) and 2.x (XML): tags
 * and texts only. No declaration, entity of its own or reference to anything outside is followed; a file with one is refused.
 *
 * <p>A line is known again by the account and the bank's own FITID, which the specification promises to be unique there.
 */
public final class OfxFile {

    private static final int MOST_LINES = 50_000;

    /** Says of a line that its amount is in another currency than the statement (OFX, "Foreign Currency Use"). */
    private static final String IN_CURRENCY = "CURRENCY";

    private static final Pattern TAG = Pattern.compile("<(/?)([A-Za-z0-9.]{1,40})\\s*>([^<]*)");
    private static final Pattern REFERENCE = Pattern.compile("&(amp|lt|gt|quot|apos|nbsp|#\\d{1,7});");

    private final List<ReadLine> lines = new ArrayList<>();
    private final Deque<String> open = new ArrayDeque<>();
    private final Map<String, String> said = new HashMap<>();
    private String account = "";
    private final String ours;
    private boolean converts;
    private boolean ended;

    private OfxFile(String ours) {
        this.ours = ours;
    }

    /** Whether the file says of itself that it is one. */
    public static boolean isOne(byte[] file) {
        String text = BankText.of(file);
        String head = text.substring(0, Math.min(2000, text.length())).toUpperCase(Locale.ROOT);
        return head.contains("OFXHEADER") || head.contains("<OFX>");
    }

    /**
     * @param inCurrency ISO 4217: a statement, or a line of one, in another one is refused
     * @throws changeover.contracts.words.Refused when it cannot be read
     */
    public static List<ReadLine> read(byte[] file, String inCurrency) {
        String text = BankText.of(file);
        if (text.contains("<!") || text.contains("<![")) {
            throw Refusal.of("bank.ofx-declares").at("file").thrown();
        }
        int begin = text.toUpperCase(Locale.ROOT).indexOf("<OFX>");
        if (begin < 0) {
            throw Refusal.of("bank.no-ofx").at("file").thrown();
        }
        OfxFile ofx = new OfxFile(inCurrency);
        Matcher tag = TAG.matcher(text);
        int at = begin;
        while (tag.find(at)) {
            ofx.take(tag.group(1).isEmpty(), tag.group(2).toUpperCase(Locale.ROOT), value(tag.group(3)));
            at = tag.end();
        }
        if (!ofx.ended || !ofx.open.isEmpty()) {
            throw Refusal.of("bank.ofx-cut").at("file").thrown();
        }
        return List.copyOf(ofx.lines);
    }

    private void take(boolean begins, String tag, String value) {
        if (begins && !value.isEmpty()) {
            value(tag, value);
        } else if (begins && tag.equals("STMTTRN")) {
            if (!open.isEmpty()) {
                throw Refusal.of("bank.ofx-cut").at("file").thrown();
            }
            said.clear();
            open.push(tag);
        } else if (!open.isEmpty() && tag.equals(IN_CURRENCY)) {
            converts = begins;
        } else if (!begins && tag.equals("STMTTRN") && !open.isEmpty()) {
            open.pop();
            keep();
        } else if (!begins && tag.equals("OFX")) {
            ended = true;
        }
    }

    private void in(String currency) {
        if (!currency.equals(ours)) {
            throw Refusal.of("bank.currency", Map.of("said", BankText.words(currency, 3), "ours", ours))
                    .at("file")
                    .thrown();
        }
    }

    private void value(String tag, String value) {
        switch (tag) {
            case "CURDEF" -> in(value);
            case "CURSYM" -> {
                if (converts) {
                    in(value);
                }
            }
            case "ACCTID" -> account = open.isEmpty() ? value : account;
            default -> {
                if (!open.isEmpty()) {
                    said.putIfAbsent(tag, value);
                }
            }
        }
    }

    private void keep() {
        if (lines.size() == MOST_LINES) {
            throw Refusal.of("bank.too-large").at("file").thrown();
        }
        String fitId = BankText.words(said.getOrDefault("FITID", ""), 255);
        String posted = said.getOrDefault("DTPOSTED", "");
        Optional<BigDecimal> amount = amount(said.getOrDefault("TRNAMT", ""));
        var day = DayStyle.YEAR_BARE.read(posted.length() < 8 ? "" : posted.substring(0, 8));
        if (fitId.isEmpty() || amount.isEmpty() || day.isEmpty()) {
            throw Refusal.of("bank.ofx-line", Map.of("number", lines.size() + 1))
                    .at("file")
                    .thrown();
        }
        if (BankAmount.isInParts(amount.get(), ours)) {
            throw Refusal.of("bank.ofx-cents", Map.of("number", lines.size() + 1))
                    .at("file")
                    .thrown();
        }
        if (BankAmount.isTooMuch(amount.get())) {
            throw Refusal.of("bank.ofx-too-much", Map.of("number", lines.size() + 1))
                    .at("file")
                    .thrown();
        }
        if (amount.get().signum() != 0) {
            String number = said.getOrDefault("CHECKNUM", said.getOrDefault("REFNUM", ""));
            String words = BankText.words(said.getOrDefault("NAME", "") + " " + said.getOrDefault("MEMO", ""), 500);
            lines.add(new ReadLine(
                    "ofx:" + BankText.words(account, 40) + ":" + fitId,
                    day.get(),
                    amount.get(),
                    words.isEmpty() ? BankText.words(said.getOrDefault("TRNTYPE", "") + " " + number, 60) : words,
                    number.isEmpty() ? null : BankText.words(number, 140),
                    WayOfLine.ofx(said.getOrDefault("TRNTYPE", ""), said.containsKey("CHECKNUM"))
                            .orElse(null)));
        }
    }

    /** The decimal sign is a point or a comma, and nothing stands between thousands (OFX, "Amount"). */
    private static Optional<BigDecimal> amount(String text) {
        return text.matches("[-+]?\\d{1,12}([.,]\\d{0,4})?|[-+]?[.,]\\d{1,4}")
                ? BankAmount.read(text.replace(',', '.'), false)
                : Optional.empty();
    }

    private static String value(String text) {
        return REFERENCE
                .matcher(text)
                .replaceAll(one -> Matcher.quoteReplacement(
                        switch (one.group(1)) {
                            case "amp" -> "&";
                            case "lt" -> "<";
                            case "gt" -> ">";
                            case "quot" -> "\"";
                            case "apos" -> "'";
                            case "nbsp" -> " ";
                            default -> letter(one.group(1));
                        }))
                .strip();
    }

    private static String letter(String reference) {
        int point = Integer.parseInt(reference.substring(1));
        return Character.isValidCodePoint(point) ? Character.toString(point) : " ";
    }
}
