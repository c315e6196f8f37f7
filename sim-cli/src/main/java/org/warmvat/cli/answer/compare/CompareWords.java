package org.warmvat.cli.answer.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.warmvat.cli.words.Words;
import org.warmvat.question.compare.CompareResult;
import org.warmvat.question.compare.CompareResult.Column;
import org.warmvat.question.compare.CompareResult.Judgement;
import org.warmvat.question.compare.Merit;

/** What is better at what, in sentences. */
final class CompareWords {

    private final CompareResult result;
    private final List<String> names;

    CompareWords(CompareResult result, List<String> names) {
        this.result = result;
        this.names = names;
    }

    /** The answer in a sentence: warmth first, then net energy, and where no gas is computed what is bought. */
    String verdict() {
        if (result.judgements().stream().allMatch(Judgement::alike)) {
            return "Nothing that was compared comes out differently.";
        }
        List<String> told = new ArrayList<>();
        told.addAll(headline(Merit.WARM));
        List<String> net = headline(Merit.USEFUL_NET_ENERGY);
        told.addAll(net.isEmpty() ? headline(Merit.NET_ENERGY) : net);
        return told.size() > 1
                ? String.join(" ", told)
                : told.isEmpty()
                        ? String.join(" ", headline(Merit.BOUGHT))
                        : told.get(0) + " " + String.join(" ", headline(Merit.BOUGHT));
    }

    private List<String> headline(Merit merit) {
        return result.judgements().stream()
                .filter(judgement -> judgement.merit() == merit)
                .map(this::sentence)
                .toList();
    }

    /** All that was judged, a sentence each. */
    List<String> sentences() {
        return result.judgements().stream().map(this::sentence).toList();
    }

    private String sentence(Judgement judgement) {
        String what = what(judgement.merit());
        if (judgement.alike()) {
            return what + ": alike, " + values(judgement, judgement.among()) + ".";
        }
        List<Integer> others = judgement.among().stream()
                .filter(index -> !judgement.best().contains(index))
                .toList();
        return what + ": "
                + Words.list(judgement.best().stream().map(names::get).toList())
                + (judgement.best().size() == 1 ? " is best, with " : " are best, with ")
                + value(judgement.merit(), judgement.best().get(0)) + "; " + values(judgement, others) + ".";
    }

    private String values(Judgement judgement, List<Integer> indices) {
        return indices.stream()
                .map(index -> names.get(index) + " " + value(judgement.merit(), index))
                .collect(Collectors.joining(", "));
    }

    private String value(Merit merit, int index) {
        Column column = result.columns().get(index);
        double value = merit.of(column).orElseThrow();
        return switch (merit) {
            case WARM, NOT_TOO_HOT -> Words.hours(value) + " h";
            case SOLAR_FRACTION -> Words.percent(value);
            case METHANE -> Words.number(value) + " Nm³";
            case BOUGHT, ELECTRICITY, NET_ENERGY, USEFUL_NET_ENERGY -> Words.kWh(value);
        };
    }

    private static String what(Merit merit) {
        return switch (merit) {
            case WARM -> "Hours below the minimum temperature";
            case NOT_TOO_HOT -> "Hours too hot to digest";
            case BOUGHT -> "Energy bought for the backup heater";
            case ELECTRICITY -> "Electricity of the machinery";
            case SOLAR_FRACTION -> "Solar fraction";
            case METHANE -> "Methane";
            case NET_ENERGY -> "Net energy";
            case USEFUL_NET_ENERGY -> "Useful net energy";
        };
    }
}
