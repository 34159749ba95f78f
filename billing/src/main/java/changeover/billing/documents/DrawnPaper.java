package changeover.billing.documents;

/**
 * A paper as it was drawn, before it is kept.
 *
 * @param fileName letters, digits, dot, line and underline only
 * @param language en or fr
 */
public record DrawnPaper(String mediaType, String fileName, String language, byte[] bytes) {

    public static DrawnPaper pdf(String name, String language, byte[] bytes) {
        String safe = name.replaceAll("[^A-Za-z0-9._-]+", "-").replaceAll("^[^A-Za-z0-9]+", "");
        String cut = safe.isEmpty() ? "paper" : safe.substring(0, Math.min(safe.length(), 100));
        return new DrawnPaper("application/pdf", cut + ".pdf", language, bytes);
    }
}
