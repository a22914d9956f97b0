import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;

/** Quotes an order as a buying list: java Quote.java ADDRESS ORDER.json. Needs Java 17 and no library. */
public final class Quote {
    private static final int ATTEMPTS = 5;

    public static void main(String[] args) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(args[0] + "/v1/quotes"))
            .header("Content-Type", "application/json")
            // A table, which needs no library to be read. A refusal is JSON all the same.
            .header("Accept", "text/csv")
            .timeout(Duration.ofSeconds(60))
            .POST(HttpRequest.BodyPublishers.ofFile(Path.of(args[1])))
            .build();
        HttpResponse<String> answer = send(HttpClient.newHttpClient(), request);
        (answer.statusCode() == 200 ? System.out : System.err).print(answer.body());
        System.exit(answer.statusCode() == 200 ? 0 : 1);
    }

    // Sends the order again where the service could not take it, after the time that it names.
    private static HttpResponse<String> send(HttpClient client, HttpRequest request) throws Exception {
        for (int attempt = 1; ; attempt++) {
            HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 429 && answer.statusCode() != 503 || attempt == ATTEMPTS) {
                return answer;
            }
            Thread.sleep(1000 * answer.headers().firstValueAsLong("Retry-After").orElse(1));
        }
    }
}
