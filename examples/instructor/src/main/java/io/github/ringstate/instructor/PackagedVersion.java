package io.github.ringstate.instructor;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Wrapping;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar's manifest. */
final class PackagedVersion implements IVersionProvider {

  @Override
  public String[] getVersion() {
    @Nullable String version = PackagedVersion.class.getPackage().getImplementationVersion();
    String name = "ringstate " + (version == null ? "(run outside its jar)" : version);
    return Stream.concat(Stream.of(name), Wrapping.lines(Caution.TEXT, Main.HELP_WIDTH).stream())
        .toArray(String[]::new);
  }
}
