package changeover.deploy.story;

/** An invented business of the story, and what its people type. */
record Business(
        String slug,
        String language,
        String region,
        String owner,
        String name,
        String town,
        String street,
        String total,
        String owed) {

    static final String OWN_PASSWORD = "a long new pass phrase";

    /**
     * 249.00 + 12.45 + 24.84 = 286.29 (GST 5 %, QST 9.975 %; Revenu Québec). A filter beyond the plan's one costs 38.00 less
     * ten percent: 34.20 + 1.71 + 3.41 = 39.32.
     */
    static final Business QUEBEC = new Business(
            "chauffage-exemple",
            "fr",
            "CA-QC",
            "claire.exemple@example.com",
            "Chauffage Exemple",
            "Val-Clairon",
            "27, rue des Aulnes",
            "286,29",
            "325,61");

    /** 249.00 + 32.37 = 281.37 (HST 13 %; Canada Revenue Agency); the filter 34.20 + 4.446, rounded 38.65. */
    static final Business ONTARIO = new Business(
            "example-heating",
            "en",
            "CA-ON",
            "ann.example@example.com",
            "Example Heating",
            "Port Ambrose",
            "9 Tannery Row",
            "281.37",
            "320.02");

    /** One visit of an hour with its trip: 96.00 + 35.00 = 131.00; 6.55 + 13.07; the second of half an hour: 83.00; 4.15 + 8.28. */
    static final Business QUEBEC_CALLED = new Business(
            "appel-exemple",
            "fr",
            "CA-QC",
            "odile.exemple@example.com",
            "Dépannage Exemple",
            "Val-Clairon",
            "8, rang du Tremble",
            "150,62",
            "246,05");

    /** 131.00 + 17.03 = 148.03 (HST 13 %); the second visit 83.00 + 10.79 = 93.79. */
    static final Business ONTARIO_CALLED = new Business(
            "call-example",
            "en",
            "CA-ON",
            "olive.example@example.com",
            "Example Repairs",
            "Port Ambrose",
            "41 Millrace Lane",
            "148.03",
            "241.82");

    boolean isFrench() {
        return language.equals("fr");
    }

    String in(String french, String english) {
        return isFrench() ? french : english;
    }

    String customer() {
        return in("Solange Vautrin", "Anselm Birk");
    }

    String danger() {
        return in("Marche pourrie derrière", "Rotten step at the back");
    }

    String technician() {
        return in("Mika Tarneau (gaz)", "Mika Tarn & Sons");
    }

    String technicianMail() {
        return in("mika.tarneau.", "mika.tarn.") + slug + "@example.com";
    }

    /** An amount as this business types it. */
    String amount(String decimal) {
        return isFrench() ? decimal.replace('.', ',') : decimal;
    }
}
