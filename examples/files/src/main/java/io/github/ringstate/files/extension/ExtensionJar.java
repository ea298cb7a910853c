package io.github.ringstate.files.extension;

import io.github.ringstate.files.digest.Digest;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.study.sweep.SweepExtension;
import java.io.IOException;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;

/**
 * A jar with extensions.
 *
 * @param name the file, as the user named it
 * @param bytes its content
 */
@SuppressWarnings("ArrayRecordComponent") // compared by its digest
public record ExtensionJar(String name, byte[] bytes) implements Serializable {

  private static final String SERVICE = "META-INF/services/" + SweepExtension.class.getName();

  /** A bound for what is read by mistake. */
  private static final int LARGEST = 1 << 26;

  /**
   * Reads a jar.
   *
   * @param name the file, as the user named it
   * @return the jar
   * @throws UserError if the file cannot be read
   */
  public static ExtensionJar read(String name) {
    try {
      Path path = Path.of(name);
      if (Files.isRegularFile(path) && Files.size(path) > LARGEST) {
        throw refused(name, "is larger than " + LARGEST + " bytes");
      }
      return new ExtensionJar(name, Files.readAllBytes(path));
    } catch (NoSuchFileException none) {
      throw UserError.file(name, "cannot be read: there is no such file", none);
    } catch (IOException | InvalidPathException failed) {
      throw UserError.file(name, "cannot be read: " + failed.getMessage(), failed);
    }
  }

  /**
   * What tells this jar from any other.
   *
   * @return its SHA-256 digest, as hexadecimal digits
   */
  public String digest() {
    return Digest.of(bytes);
  }

  /**
   * Loads what it holds.
   *
   * @return its extensions, in the order in which the jar names them; at least one
   * @throws UserError if it holds none, or one that cannot be loaded
   */
  List<SweepExtension> load() {
    try {
      JarClasses classes = new JarClasses(bytes, SweepExtension.class.getClassLoader());
      if (classes.isEmpty()) {
        throw refused(name, "is no jar");
      }
      if (!classes.has(SERVICE)) {
        throw refused(name, "has no " + SERVICE + " that names one");
      }
      List<SweepExtension> loaded = new ArrayList<>();
      for (ServiceLoader.Provider<SweepExtension> provider :
          (Iterable<ServiceLoader.Provider<SweepExtension>>)
              ServiceLoader.load(SweepExtension.class, classes).stream()::iterator) {
        // what else is on the class path is not this jar's
        if (provider.type().getClassLoader() == classes) {
          loaded.add(provider.get());
        }
      }
      if (loaded.isEmpty()) {
        throw refused(name, "names none in " + SERVICE);
      }
      return loaded;
    } catch (IOException bad) {
      throw refused(name, "is no jar: " + bad.getMessage());
    } catch (ServiceConfigurationError bad) {
      throw refused(name, why(bad));
    } catch (LinkageError bad) {
      throw refused(name, "has classes that do not fit: " + bad);
    }
  }

  /** The loader's message without the name of the interface; a cause says more than it does. */
  private static String why(ServiceConfigurationError bad) {
    String message =
        String.valueOf(bad.getMessage()).replace(SweepExtension.class.getName() + ": ", "");
    Throwable cause = bad.getCause();
    return "cannot be loaded: " + message + (cause == null ? "" : " (" + cause + ")");
  }

  private static UserError refused(String name, String why) {
    return UserError.file(name, "cannot be an extension: it " + why, null);
  }
}
