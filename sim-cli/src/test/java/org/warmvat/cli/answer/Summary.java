package org.warmvat.cli.answer;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.warmvat.question.year.YearResult;

/** A {@code summary.json} as a reader outside the program sees it. */
final class Summary {

    static final Origin ORIGIN = new Origin(
            "1.2.3",
            List.of(
                    InputFile.of("design", "tank.yaml", new byte[] {'a', 'b', 'c'}),
                    InputFile.of("weather", "year.csv", new byte[0])));

    private final JsonNode root;

    private Summary(JsonNode root) {
        this.root = root;
    }

    static Summary of(YearResult run) {
        try {
            return new Summary(new ObjectMapper().readTree(Report.summary(run, Optional.empty(), ORIGIN)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    JsonNode root() {
        return root;
    }

    /** The node at a path such as {@code year/electricity_kwh/mixer}. */
    JsonNode at(String path) {
        JsonNode node = root.at("/" + path);
        if (node.isMissingNode()) {
            throw new AssertionError("summary.json has no " + path);
        }
        return node;
    }

    double number(String path) {
        JsonNode node = at(path);
        if (!node.isNumber()) {
            throw new AssertionError(path + " is " + node + ", expected a number");
        }
        return node.doubleValue();
    }
}
