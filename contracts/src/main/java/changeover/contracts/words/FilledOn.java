package changeover.contracts.words;

/**
 * A form is stored only on the version that it was filled on; the second editor sees both. Compared by hand, because the
 * row is loaded after the form was filled.
 *
 * @param version the version that the form carried
 */
public record FilledOn(int version) {

    /** @throws Refused when somebody has changed the row since */
    public void mustBe(int now) {
        if (version != now) {
            throw Refusal.of("changed-meanwhile").thrown();
        }
    }
}
