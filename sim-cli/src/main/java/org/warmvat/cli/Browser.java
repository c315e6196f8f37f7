package org.warmvat.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Opens an address in the browser that the system prefers. */
final class Browser {

    private static final long PATIENCE_S = 3;

    private Browser() {}

    /** Asks the system to open it; whether that seems to have worked. */
    static boolean opens(String address) {
        try {
            Process process = new ProcessBuilder(command(address))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            // one that runs on is a browser; one that ends at once in vain found none
            return !process.waitFor(PATIENCE_S, TimeUnit.SECONDS) || process.exitValue() == 0;
        } catch (IOException missing) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static List<String> command(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        return List.of(system.startsWith("mac") ? "open" : "xdg-open", address);
    }
}
