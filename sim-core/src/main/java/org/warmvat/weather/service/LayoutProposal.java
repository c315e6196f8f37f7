package org.warmvat.weather.service;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.ColumnUnit;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/** Proposes a layout for a text from its head, as a YAML file with what is to be confirmed or filled in. */
public final class LayoutProposal {
    private static final Layout.Source UNKNOWN =
            new Layout.Source(Optional.empty(), Optional.empty(), Optional.empty());
    private static final Set<String> CODES = Set.of("-999", "-9999", "-9900", "-99", "NA", "NaN", "---");

    /** How services and spreadsheets, most of them in English and German, head their columns, in small letters. */
    private static final Map<Quantity, Pattern> NAMES = new EnumMap<>(Map.ofEntries(
            Map.entry(
                    Quantity.AIR,
                    words(
                            "t2m|temp.*2m|temperature_2m|air.?temp.*|temp.*|tt(_.*)?|t|ta|tair|tamb|dry.?bulb.*|luft.?temp.*|au(ß|ss)en.?temp.*")),
            Map.entry(Quantity.DEW_POINT, words("dew.?point.*|td|tdew|taupunkt.*|t2mdew")),
            Map.entry(
                    Quantity.RELATIVE_HUMIDITY,
                    words("rh|rf|relative.?humidity.*|rhum.*|rf_tu|humid.*|(luft)?feucht.*|rel.*feucht.*|rh2m")),
            Map.entry(
                    Quantity.WIND,
                    words("wind.?speed.*|ws(10m?)?|wspd.*|ff|f|wind|windgeschw.*|vent.*|vitesse.*|viento.*|wind_m_s")),
            Map.entry(Quantity.PRESSURE, words("press.*|surface.?pressure.*|p|p0|sp|ps|luftdruck.*|stnlp.*")),
            Map.entry(
                    Quantity.GLOBAL,
                    words(
                            "ghi.*|global.*|g\\(h\\)|shortwave.?radiation.*|glbl.*|fg_lberg|gs|strahlung.*|glob.*|rayonnement.*|radiaci.*|g|solar.*rad.*|ssrd.*")),
            Map.entry(Quantity.BEAM, words("dni.*|bni.*|gb\\(n\\)|direct.?normal.*|beam.*")),
            Map.entry(Quantity.DIFFUSE, words("dhi.*|diffuse.*|gd\\(h\\)|fd_lberg|dif.*")),
            Map.entry(Quantity.CLOUD, words("cloud.*|totcld.*|bew.*")),
            Map.entry(Quantity.LONGWAVE, words("ir\\(h\\)|long.?wave.*|lw.?down.*|ld|atmo_lberg"))));

    private final TableGuess table;
    private final boolean latin1;
    private final List<String> remarks = new ArrayList<>();

    private LayoutProposal(TableGuess table, boolean latin1) {
        this.table = table;
        this.latin1 = latin1;
    }

    private static Pattern words(String regex) {
        return Pattern.compile("(" + regex + ")\\W*");
    }

    /**
     * Proposes.
     *
     * @param text the whole text
     * @param latin1 whether its bytes were Latin-1
     * @return a layout file; empty where nothing in the text looks like rows
     */
    public static Optional<String> of(String text, boolean latin1) {
        Optional<Recognised> known = Recognised.in(text);
        if (known.isPresent()) {
            Layout layout = known.get().layout();
            return Optional.of("# " + known.get().sentence() + "\n# It is read without this layout.\n"
                    + LayoutYaml.of(layout.in(layout.text().inLatin1(latin1))));
        }
        return TableGuess.of(text).map(table -> new LayoutProposal(table, latin1).yaml());
    }

    private String yaml() {
        Layout.Time time = time();
        Layout layout = new Layout(
                new Layout.Text(
                        Math.max(0, table.headingLine() < 0 ? table.firstRow() : table.headingLine()),
                        table.headingLine() >= 0,
                        table.delimiter(),
                        table.commas() ? ',' : '.',
                        Optional.empty(),
                        latin1),
                time,
                columns(time.stepMinutes()),
                codes(),
                new Layout.SiteSource(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN));
        remarks.add(
                "stamp: which moment of its step a row's time names; ask the service. \"weather look\" tells what the sun says to it.");
        remarks.add("clock: local (standard time all year), utc or solar (true solar time).");
        remarks.add(
                "Check every unit: column blocks take unit: c k f, percent, km/h kt, pa hpa, w/m2 kj/m2 j/cm2 and more.");
        StringBuilder yaml = new StringBuilder(
                "# Proposed from the head of the file. Confirm each line, fill in the site, then: --layout THIS\n");
        remarks.forEach(remark -> yaml.append("# ").append(remark).append('\n'));
        return yaml.append(LayoutYaml.of(layout)).toString();
    }

    private Layout.Place place(int index) {
        return table.headingLine() >= 0
                        && index < table.names().size()
                        && !table.names().get(index).isEmpty()
                        && Collections.frequency(table.names(), table.names().get(index)) == 1
                ? new Layout.ByHeading(table.names().get(index))
                : new Layout.ByNumber(index + 1);
    }

    private Layout.Time time() {
        TimeGuess guess = TimeGuess.of(table);
        guess.remark().ifPresent(remarks::add);
        return new Layout.Time(
                guess.columns().stream().map(this::place).toList(),
                new TimeForm(guess.form()),
                Stamp.HOUR_END,
                guess.universal() ? Layout.Clock.UTC : Layout.Clock.LOCAL,
                false,
                guess.stepMinutes(),
                OptionalDouble.empty());
    }

    private Map<Quantity, Layout.Column> columns(int stepMinutes) {
        Map<Quantity, Layout.Column> columns = new EnumMap<>(Quantity.class);
        for (int i = 0; i < table.names().size(); i++) {
            String name = table.names().get(i);
            String bare = bare(name).toLowerCase(Locale.ROOT);
            for (Map.Entry<Quantity, Pattern> known : NAMES.entrySet()) {
                boolean like = known.getValue().matcher(bare).matches()
                        || known.getValue()
                                .matcher(name.toLowerCase(Locale.ROOT))
                                .matches();
                if (like && !columns.containsKey(known.getKey()) && !table.isTime(i)) {
                    columns.put(known.getKey(), column(known.getKey(), i, stepMinutes));
                    break;
                }
            }
        }
        if (!columns.containsKey(Quantity.AIR) || !columns.containsKey(Quantity.GLOBAL)) {
            remarks.add(
                    "columns: name the ones for air_c and global_w_m2 (or beam_w_m2 and diffuse_w_m2) that were not found.");
        }
        return columns;
    }

    /** A heading without the unit behind it. */
    private static String bare(String name) {
        String open = name.replaceAll("[\\[(,].*", "").strip();
        int last = open.lastIndexOf(' ');
        boolean unit = last > 0 && HeadingUnit.isUnit(open.substring(last + 1));
        return (unit ? open.substring(0, last) : open.replaceAll("/.*", "")).strip();
    }

    private Layout.Column column(Quantity quantity, int index, int stepMinutes) {
        ColumnUnit unit = HeadingUnit.of(quantity, table.names().get(index), table.most(index))
                .map(word -> ColumnUnit.of(quantity, word, stepMinutes))
                .orElse(ColumnUnit.SAME);
        return new Layout.Column(List.of(place(index)), unit.factor(), unit.offset(), Set.of());
    }

    private Set<String> codes() {
        return table.rows().stream()
                .flatMap(List::stream)
                .map(cell -> cell.replaceAll("\\.0+$", ""))
                .filter(CODES::contains)
                .collect(java.util.stream.Collectors.toSet());
    }
}
