package org.warmvat.cli;

import org.warmvat.cli.answer.Program;
import picocli.CommandLine.IVersionProvider;

/** The program's version for its own option. */
final class ProgramVersion implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"warmvat " + Program.version()};
    }
}
