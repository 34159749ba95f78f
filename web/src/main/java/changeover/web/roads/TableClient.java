package changeover.web.roads;

import changeover.scheduling.dayplan.routes.Travel.Place;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Asks a table service for the seconds from some places to others: {@code GET
 * /table/v1/driving/LON,LAT;LON,LAT?sources=0;1&destinations=2;3}, answered by {@code {"code": "Ok", "durations": [[…], …]}}
 * with a row a source, as the Open Source Routing Machine's HTTP API has it. What is late, broken, too large or of another
 * size is no answer.
 */
final class TableClient {

    private static final long LARGEST = 8L * 1024 * 1024;
    private static final double LONGEST = Duration.ofDays(2).toSeconds();

    /** There is no road between the two. */
    static final int NO_ROAD = -1;

    private final URI service;
    private final Duration patience;
    private final HttpClient client;
    private final ObjectMapper json = new ObjectMapper();

    /** @param patience for one answer, from the question to its last byte */
    TableClient(URI service, Duration patience) {
        this.service = service;
        this.patience = patience;
        client = HttpClient.newBuilder()
                .connectTimeout(patience)
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
    }

    /** @throws NoAnswer whatever went wrong, with what it was */
    int[][] ask(java.util.List<Place> from, java.util.List<Place> to) throws NoAnswer {
        HttpRequest request =
                HttpRequest.newBuilder(address(from, to)).timeout(patience).build();
        CompletableFuture<HttpResponse<byte[]>> asked = client.sendAsync(
                request, HttpResponse.BodyHandlers.limiting(HttpResponse.BodyHandlers.ofByteArray(), LARGEST));
        try {
            HttpResponse<byte[]> answer = asked.get(patience.toMillis(), TimeUnit.MILLISECONDS);
            if (answer.statusCode() != 200) {
                throw new NoAnswer("it said " + answer.statusCode());
            }
            return read(json.readTree(answer.body()), from.size(), to.size());
        } catch (TimeoutException late) {
            asked.cancel(true);
            throw new NoAnswer("it was late");
        } catch (ExecutionException | IOException broken) {
            throw new NoAnswer(broken.getMessage() == null ? broken.toString() : broken.getMessage());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new NoAnswer("nobody waited for it");
        }
    }

    private URI address(java.util.List<Place> from, java.util.List<Place> to) {
        String places = Stream.concat(from.stream(), to.stream())
                .map(place -> String.format(Locale.ROOT, "%.5f,%.5f", place.longitude(), place.latitude()))
                .collect(Collectors.joining(";"));
        return URI.create(service.toString().replaceAll("/+$", "") + "/table/v1/driving/" + places
                + "?annotations=duration" + "&sources=" + numbers(0, from.size()) + "&destinations="
                + numbers(from.size(), from.size() + to.size()));
    }

    private static String numbers(int first, int until) {
        return IntStream.range(first, until).mapToObj(String::valueOf).collect(Collectors.joining(";"));
    }

    private static int[][] read(JsonNode answer, int rows, int columns) throws NoAnswer {
        JsonNode durations = answer == null ? null : answer.path("durations");
        if (durations == null || !"Ok".equals(answer.path("code").asText())) {
            throw new NoAnswer("it said no");
        }
        boolean square = durations.isArray() && durations.size() == rows;
        int[][] seconds = new int[rows][columns];
        for (int row = 0; square && row < rows; row++) {
            JsonNode line = durations.get(row);
            square = line.isArray() && line.size() == columns;
            for (int column = 0; square && column < columns; column++) {
                seconds[row][column] = seconds(line.get(column));
            }
        }
        if (!square) {
            throw new NoAnswer("its table is of another size");
        }
        return seconds;
    }

    private static int seconds(JsonNode cell) throws NoAnswer {
        if (cell.isNull()) {
            return NO_ROAD;
        }
        double said = cell.asDouble(-1);
        if (!cell.isNumber() || !(said >= 0 && said <= LONGEST)) {
            throw new NoAnswer("a road of " + cell + " seconds");
        }
        return (int) Math.ceil(said);
    }
}
