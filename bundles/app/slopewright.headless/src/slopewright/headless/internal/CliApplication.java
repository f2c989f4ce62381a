package slopewright.headless.internal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import slopewright.headless.Main;

/** Starts the command line on the platform and hands its exit code on. */
public final class CliApplication implements IApplication {

    private static final int BUFFER_BYTES = 1 << 16;

    @Override
    public Object start(IApplicationContext context) {
        String[] words = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        try (PrintStream out = stream(FileDescriptor.out, false); PrintStream err = stream(FileDescriptor.err, true)) {
            return Main.run(words, out, err, System.in);
        }
    }

    @Override
    public void stop() {
        // a command runs to its end
    }

    private static PrintStream stream(FileDescriptor descriptor, boolean flushLines) {
        java.io.OutputStream raw = new java.io.BufferedOutputStream(new FileOutputStream(descriptor), BUFFER_BYTES);
        return new PrintStream(raw, flushLines, StandardCharsets.UTF_8);
    }
}
