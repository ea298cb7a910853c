package io.github.ringstate.instructor;

import io.github.ringstate.instructor.report.Caution;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar's manifest. */
final class PackagedVersion implements IVersionProvider {

  @Override
  public String[] getVersion() {
    @Nullable String version = PackagedVersion.class.getPackage().getImplementationVersion();
    return new String[] {
      "ringstate " + (version == null ? "(run outside its jar)" : version), Caution.TEXT
    };
  }
}
