package org.warmvat.cli;

import java.io.IOException;
import java.net.BindException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.CommonOptions;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.cli.page.PageServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code page}: the tank on a page in the browser. */
@Command(
        name = "page",
        sortOptions = false,
        description = {
            "Shows the tank on a page in the browser of this machine: sliders that redraw the whole year, the design as a form, and"
                    + " all questions of the command line. Nothing leaves the machine, and no other machine can look at it.",
            "Without a design or weather the built-in invented demonstration is used. Ctrl-C stops it."
        })
final class PageCommand implements Callable<Integer> {

    private static final int MOST_PORT = 65_535;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", arity = "0..1", paramLabel = "DESIGN", description = "Design file, YAML or JSON.")
    private Optional<Path> designFile = Optional.empty();

    @Parameters(index = "1", arity = "0..1", paramLabel = "WEATHER", description = "Weather file, hourly.")
    private Optional<Path> weatherFile = Optional.empty();

    @Mixin
    private WeatherOptions weather;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "0",
            description = "Port to serve on (any that is free).")
    private int port;

    @Option(names = "--no-open", description = "Only print the address; do not open the browser.")
    private boolean noOpen;

    @Option(names = "--until-closed", description = "Stop when the page is closed.")
    private boolean untilClosed;

    @Override
    public Integer call() throws IOException {
        common.within("--port", port, 0, MOST_PORT);
        PageServer.Start start = start();
        try (PageServer server = PageServer.start(port, start, new PageQuestions())) {
            common.print(server.address() + System.lineSeparator());
            boolean opened = noOpen || Browser.opens(server.address());
            common.tell((opened ? "" : "No browser could be opened: open the address above in one. ")
                    + "Ctrl-C stops the page.");
            server.await();
        } catch (BindException taken) {
            throw common.wrong("--port " + port + " is taken, expected one that is free");
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return ExitCode.DONE.number();
    }

    private PageServer.Start start() {
        Inputs inputs = Inputs.read(designFile, weatherFile.stream().toList(), weather.way(), design -> {});
        byte[] design = designFile.map(Inputs::bytes).orElseGet(DesignDocument::demonstrationBytes);
        String text = new String(design, StandardCharsets.UTF_8).replaceFirst("^\ufeff", "");
        return new PageServer.Start(
                text,
                weatherFile.map(file -> new PageServer.GivenWeather(
                        Inputs.bytes(file),
                        weather.way().layoutFile().map(Inputs::bytes),
                        weather.way().fillHolesH(),
                        inputs.weather())),
                untilClosed);
    }
}
