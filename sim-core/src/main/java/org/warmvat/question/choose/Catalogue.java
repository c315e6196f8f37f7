package org.warmvat.question.choose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.SolarCircuit;

/**
 * What can be bought and on what terms.
 *
 * @param drawn the design as drawn
 * @param choices what is to be chosen, at least one
 * @param terms what money costs
 * @param limits what every design must keep to
 * @param built makes the drawn design with some of its keys set
 */
public record Catalogue(
        Design drawn, List<Choice> choices, Terms terms, Limits limits, Function<Map<String, Object>, Design> built) {

    /** A circuit that is left out when one of its numbers is 0. */
    private record Circuit(String block, String key, Class<? extends Record> part) {}

    private static final List<Circuit> CIRCUITS = List.of(
            new Circuit("solar", "solar.area_m2", SolarCircuit.class),
            new Circuit("backup", "backup.rated_w", BackupCircuit.class));

    /** Keeps its own list. */
    public Catalogue {
        choices = List.copyOf(choices);
    }

    int[] sizes() {
        return choices.stream().mapToInt(choice -> choice.options().size()).toArray();
    }

    /** How many combinations there are; {@link Long#MAX_VALUE} where they are more than can be counted. */
    public long points() {
        double product = 1;
        for (Choice choice : choices) {
            product *= choice.options().size();
        }
        return product > 1e15 ? Long.MAX_VALUE : (long) product;
    }

    boolean[] easing() {
        boolean[] easing = new boolean[choices.size()];
        IntStream.range(0, easing.length)
                .forEach(i -> easing[i] = choices.get(i).easing());
        return easing;
    }

    /** A number for a combination: its place when the last choice runs fastest. */
    long number(List<Integer> point) {
        long number = 0;
        for (int i = 0; i < point.size(); i++) {
            number = number * choices.get(i).options().size() + point.get(i);
        }
        return number;
    }

    /** Whether a key belongs to a circuit that a design has not got. */
    static boolean lacks(Design design, String key) {
        return (key.startsWith("solar.") && design.solar().isEmpty())
                || (key.startsWith("backup.") && design.backup().isEmpty());
    }

    private Map<String, Object> set(List<Integer> point) {
        Map<String, Object> set = new LinkedHashMap<>();
        for (int i = 0; i < point.size(); i++) {
            set.putAll(choices.get(i).at(point.get(i)).set());
        }
        return set;
    }

    private static boolean leavesOut(Circuit circuit, Map<String, Object> set) {
        return set.get(circuit.key()) instanceof Number amount && amount.doubleValue() == 0;
    }

    /** The same combination with the first option wherever a choice means nothing, since its circuit is left out. */
    List<Integer> plain(List<Integer> point) {
        Map<String, Object> set = set(point);
        List<Integer> plain = new ArrayList<>(point);
        for (Circuit circuit : CIRCUITS) {
            for (int i = 0; leavesOut(circuit, set) && i < plain.size(); i++) {
                boolean itself = choices.get(i).at(point.get(i)).set().containsKey(circuit.key());
                if (!itself && choices.get(i).isOf(circuit.block())) {
                    plain.set(i, 0);
                }
            }
        }
        return List.copyOf(plain);
    }

    /**
     * The design of a combination; an amount of 0 leaves a circuit out.
     *
     * @throws IllegalArgumentException when it is not allowed
     */
    public Design design(List<Integer> point) {
        Map<String, Object> set = set(point);
        List<Circuit> out =
                CIRCUITS.stream().filter(circuit -> leavesOut(circuit, set)).toList();
        out.forEach(circuit -> set.keySet().removeIf(key -> key.startsWith(circuit.block() + ".")));
        Design design = built.apply(set);
        for (Circuit circuit : out) {
            design = design.without(circuit.part());
        }
        return design;
    }

    /** What a combination costs to buy, whatever is bought anyway included. */
    double outlay(List<Integer> point, Design design) {
        double outlay = terms.fixedOutlay();
        for (int i = 0; i < point.size(); i++) {
            Choice.Option option = choices.get(i).at(point.get(i));
            Set<String> keys = option.set().keySet();
            boolean idle = keys.stream().allMatch(key -> lacks(design, key)) && !leavesSomethingOut(option);
            outlay += idle ? 0 : option.price().of(design, keys);
        }
        return outlay;
    }

    private static boolean leavesSomethingOut(Choice.Option option) {
        return CIRCUITS.stream().anyMatch(circuit -> leavesOut(circuit, option.set()));
    }

    /** What the design as drawn costs to buy at these prices; empty where one of the choices does not say. */
    Optional<Double> drawnOutlay() {
        double outlay = terms.fixedOutlay();
        for (Choice choice : choices) {
            Optional<Choice.Option> own = choice.options().stream()
                    .filter(option ->
                            option.byAmount() || built.apply(option.set()).equals(drawn))
                    .findFirst();
            if (own.isEmpty()) {
                return Optional.empty();
            }
            Set<String> keys = own.get().set().keySet();
            outlay += own.get().price().of(drawn, keys);
        }
        return Optional.of(outlay);
    }

    /** What is chosen in a combination, by the names of the choices; what means nothing there is left out. */
    public Map<String, Object> chosen(List<Integer> point) {
        Map<String, Object> chosen = new LinkedHashMap<>();
        Map<String, Object> set = set(point);
        for (int i = 0; i < point.size(); i++) {
            Choice choice = choices.get(i);
            Choice.Option option = choice.at(point.get(i));
            boolean idle = CIRCUITS.stream()
                    .anyMatch(circuit -> leavesOut(circuit, set)
                            && choice.isOf(circuit.block())
                            && !option.set().containsKey(circuit.key()));
            if (!idle) {
                chosen.put(choice.name(), option.shown());
            }
        }
        return chosen;
    }
}
