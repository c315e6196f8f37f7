package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Numbers;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.keys.Shown;
import org.warmvat.question.choose.Aim;
import org.warmvat.question.choose.Catalogue;
import org.warmvat.question.choose.Choice;
import org.warmvat.question.choose.Limits;
import org.warmvat.question.choose.Price;
import org.warmvat.question.choose.Terms;

/** Reads files of choices: YAML or JSON that says what can be bought, at what prices and within what limits. */
public final class ChoicesDocument {

    private static final FileSchema SCHEMA = FileSchema.shipped("choices.schema.json");
    private static final double USUAL_YEARS = 15;
    private static final double USUAL_INTEREST = 0.03;

    /** More of these never makes the tank short for longer, nor its warm-up longer. */
    private static final String EASING = "envelope\\.((lid|floor)_)?insulation_mm|backup\\.rated_w";

    private static final Set<String> CIRCUITS = Set.of("solar.area_m2", "backup.rated_w");
    private static final List<String> VALUE_PRICES = List.of("price_each", "price_per_m2", "price_per_m2_mm");
    private static final List<String> OPTION_PRICES = List.of("price", "price_per_m2", "price_per_m2_mm");

    private final DesignDocument design;
    private final JsonNode tree;
    private final Faults faults;
    private final Map<String, String> placed = new HashMap<>();

    private ChoicesDocument(DesignDocument design, FileTree file) {
        this.design = design;
        tree = file.keys();
        faults = file.faults();
    }

    /**
     * What a file said.
     *
     * @param by what is to be best
     * @param catalogue what can be bought
     * @param assumed defaults that were used, one sentence each
     */
    public record Choices(Aim by, Catalogue catalogue, List<String> assumed) {}

    /**
     * Reads the bytes of a file of choices.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param bytes UTF-8 text
     * @param design the design that is chosen about
     * @throws InputRefused with every fault, up to twenty
     */
    public static Choices read(String name, byte[] bytes, DesignDocument design) {
        String text = SourceText.decode(name, bytes);
        FileTree file = FileTree.read(name, text).checked(SCHEMA);
        Choices choices = new ChoicesDocument(design, file).choices();
        file.faults().refuseIfAny();
        return choices;
    }

    private Choices choices() {
        List<Choice> choices = new ArrayList<>();
        tree.path("choose").properties().forEach(entry -> {
            String path = KeyPath.key("choose", entry.getKey());
            choices.add(
                    entry.getValue().has("options")
                            ? options(path, entry.getKey(), entry.getValue())
                            : values(path, entry.getKey(), entry.getValue()));
        });
        faults.refuseIfAny();
        List<String> assumed = new ArrayList<>();
        Terms terms = new Terms(
                number("years", USUAL_YEARS, assumed),
                number("interest", USUAL_INTEREST, assumed),
                fixed(),
                tree.path("upkeep_per_year").asDouble(0));
        Catalogue catalogue = new Catalogue(design.design(), choices, terms, limits(tree.path("limits")), design::set);
        tryAll(catalogue);
        Aim by = Aim.valueOf(tree.path("by").asText("cost").toUpperCase(Locale.ROOT));
        return new Choices(by, catalogue, assumed);
    }

    private double number(String key, double usual, List<String> assumed) {
        if (!tree.has(key)) {
            assumed.add("The file of choices gives no " + key + ": " + Shown.number(usual) + " was taken.");
        }
        return tree.path(key).asDouble(usual);
    }

    private double fixed() {
        double sum = 0;
        for (Map.Entry<String, JsonNode> price : tree.path("fixed_prices").properties()) {
            sum += price.getValue().asDouble();
        }
        return sum;
    }

    private static Limits limits(JsonNode limits) {
        return new Limits(
                FileTree.number(limits, "hours_below_floor"),
                FileTree.number(limits, "warm_up_days"),
                FileTree.number(limits, "net_energy_kwh_least"),
                FileTree.number(limits, "net_energy_kwh_least_month"),
                FileTree.number(limits, "budget"));
    }

    /** A key of the design with values. */
    private Choice values(String path, String key, JsonNode choice) {
        JsonNode values = choice.path("values");
        if (values.isMissingNode()) {
            faults.add(KeyPath.key(path, "values"), "is missing, expected a list of numbers, or options");
        }
        place(path, key, path);
        mustBePriced(path, choice, VALUE_PRICES);
        JsonNode each = choice.path("price_each");
        if (each.isArray() && each.size() != values.size()) {
            faults.add(
                    KeyPath.key(path, "price_each"),
                    "has " + each.size() + " prices, expected one for each of the " + values.size() + " values");
        }
        List<Choice.Option> options = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            double value = values.get(i).asDouble();
            boolean nothing = value == 0 && CIRCUITS.contains(key);
            double one = each.isArray() ? each.path(i).asDouble() : nothing ? 0 : each.asDouble(0);
            options.add(new Choice.Option(
                    value, Map.of(key, value), price(path, choice, one, Set.of(key)), !each.isArray()));
        }
        long different = options.stream().map(Choice.Option::shown).distinct().count();
        if (different < options.size()) {
            faults.add(KeyPath.key(path, "values"), "holds a value twice, expected each once");
        }
        options.sort(Comparator.comparingDouble(option -> (Double) option.shown()));
        return faults.isEmpty() ? new Choice(key, options, key.matches(EASING)) : unread();
    }

    /** Stands for a choice with a fault, which is told in the end. */
    private static Choice unread() {
        return new Choice("", List.of(new Choice.Option("", Map.of(), new Price(0, 0, 0), false)), false);
    }

    private Choice options(String path, String name, JsonNode choice) {
        for (String key : List.of("values", "price_each", "price_per_m2", "price_per_m2_mm")) {
            if (choice.has(key)) {
                faults.add(KeyPath.key(path, key), "stands beside options, expected one or the other");
            }
        }
        List<Choice.Option> options = new ArrayList<>();
        for (int i = 0; i < choice.path("options").size(); i++) {
            JsonNode option = choice.path("options").get(i);
            String at = KeyPath.entry(KeyPath.key(path, "options"), i);
            Map<String, Object> set = new LinkedHashMap<>();
            option.path("set").properties().forEach(entry -> {
                JsonNode value = entry.getValue();
                set.put(entry.getKey(), value.isNumber() ? (Object) value.asDouble() : value.asText());
                place(KeyPath.key(KeyPath.key(at, "set"), entry.getKey()), entry.getKey(), path);
            });
            mustBePriced(at, option, OPTION_PRICES);
            options.add(new Choice.Option(
                    option.path("label").asText(),
                    set,
                    price(at, option, option.path("price").asDouble(0), set.keySet()),
                    false));
        }
        if (options.stream().map(Choice.Option::shown).distinct().count() < options.size()) {
            faults.add(KeyPath.key(path, "options"), "holds a label twice, expected each once");
        }
        return new Choice(name, options, false);
    }

    private void mustBePriced(String path, JsonNode block, List<String> keys) {
        if (keys.stream().noneMatch(block::has)) {
            faults.add(
                    path, "has no price, expected " + String.join(", ", keys) + " or several of them (0 for nothing)");
        }
    }

    /** A price by area needs one. */
    private Price price(String path, JsonNode block, double each, Set<String> keys) {
        boolean insulation = keys.stream().anyMatch(key -> key.matches("(envelope|materials)\\..*"));
        boolean area = insulation || keys.stream().anyMatch(key -> key.endsWith("area_m2"));
        double perM2 = perPart(
                path, block, "price_per_m2", area, "area, expected a key that ends in area_m2 or one of the envelope");
        double perM2Mm = perPart(
                path,
                block,
                "price_per_m2_mm",
                insulation,
                "thickness, expected a key of the envelope such as envelope.insulation_mm");
        return new Price(each, perM2, perM2Mm);
    }

    private double perPart(String path, JsonNode block, String key, boolean applies, String lacking) {
        if (block.has(key) && !applies) {
            faults.add(KeyPath.key(path, key), "has no " + lacking);
        }
        return block.path(key).asDouble(0);
    }

    /** Each key of the design belongs to one choice. */
    private void place(String path, String key, String choice) {
        try {
            String before = placed.putIfAbsent(Numbers.place(design.design(), key), choice);
            if (before != null && !before.equals(choice)) {
                faults.add(path, "is set by " + before + " too, expected one choice for each key");
            }
        } catch (Refused unknown) {
            faults.add(path, "cannot be chosen: " + unknown.faults().get(0));
        }
    }

    /** Tries each option alone, then all at their first and all at their last; what is not allowed is told before any run. */
    private void tryAll(Catalogue catalogue) {
        for (Choice choice : catalogue.choices()) {
            for (Choice.Option option : choice.options()) {
                allowed(KeyPath.key("choose", choice.name()), "at " + shown(option), () -> design.set(option.set()));
            }
        }
        List<Integer> last = catalogue.choices().stream()
                .map(choice -> choice.options().size() - 1)
                .toList();
        List<Integer> first = last.stream().map(i -> 0).toList();
        if (faults.isEmpty()) {
            allowed("choose", "with the last of each", () -> catalogue.design(last));
            allowed("choose", "with the first of each", () -> catalogue.design(first));
        }
    }

    private static String shown(Choice.Option option) {
        return option.shown() instanceof Double value ? Shown.number(value) : Shown.quoted((String) option.shown());
    }

    private void allowed(String path, String which, Runnable made) {
        try {
            made.run();
        } catch (Refused refused) {
            String all = String.join(
                    "; ", refused.faults().stream().map(Refused.Fault::toString).toList());
            faults.add(path, which + ": " + all);
        }
    }
}
