package org.warmvat.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The package map as drawn.
 *
 * @param arrows for each package below {@code org.warmvat} the packages it may use
 * @param libraries for each library's root package the packages that may use it
 */
record PackageMap(Map<String, Set<String>> arrows, Map<String, Set<String>> libraries) {

    private static final Pattern BOX = Pattern.compile("([a-z.]+)(?: --> ([a-z.]+(?: & [a-z.]+)*))?");
    private static final Pattern FRAME = Pattern.compile("flowchart TD|subgraph \\w+ \\[[\\w-]+]|end");
    private static final Pattern LIBRARY = Pattern.compile("\\| `([\\w.]+)` \\| (`[a-z.]+`(?:, `[a-z.]+`)*) \\|.*");

    /** Reads the first mermaid block and every table row that begins with a library's package. */
    static PackageMap read(Path page) throws IOException {
        List<String> lines = Files.readAllLines(page);
        int start = lines.indexOf("```mermaid");
        int end = start + lines.subList(start, lines.size()).indexOf("```");
        return new PackageMap(arrows(lines.subList(start + 1, end)), libraries(lines));
    }

    /** The packages that lie on a circle of arrows or lead into one; none on a sound map. */
    Set<String> tangled() {
        Map<String, Set<String>> left = new TreeMap<>(arrows);
        while (left.values().removeIf(targets -> targets.stream().noneMatch(left::containsKey))) {
            // Each pass takes away the packages that use only what is already gone.
        }
        return left.keySet();
    }

    /** The packages that an arrow or a library names but that have no box. */
    Set<String> named() {
        Set<String> names = new TreeSet<>();
        arrows.values().forEach(names::addAll);
        libraries.values().forEach(names::addAll);
        names.removeAll(arrows.keySet());
        return names;
    }

    private static Map<String, Set<String>> arrows(List<String> drawing) {
        Map<String, Set<String>> arrows = new TreeMap<>();
        for (String line : drawing) {
            String drawn = line.strip();
            Matcher box = BOX.matcher(drawn);
            if (FRAME.matcher(drawn).matches()) {
                continue;
            }
            if (!box.matches() || arrows.put(box.group(1), parts(box.group(2), " & ")) != null) {
                throw new IllegalArgumentException("the map's line \"" + drawn
                        + "\", expected one line per package like \"gas --> network & design\"");
            }
        }
        return arrows;
    }

    private static Map<String, Set<String>> libraries(List<String> lines) {
        Map<String, Set<String>> libraries = new TreeMap<>();
        for (String line : lines) {
            Matcher row = LIBRARY.matcher(line);
            if (row.matches()) {
                libraries.put(row.group(1), parts(row.group(2).replace("`", ""), ", "));
            }
        }
        return libraries;
    }

    private static Set<String> parts(String list, String between) {
        return list == null ? Set.of() : new TreeSet<>(List.of(list.split(Pattern.quote(between), -1)));
    }
}
