package io.github.ringstate.cluster.result;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.digest.Digest;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.Sidecar;
import io.github.ringstate.files.row.Difference;
import io.github.ringstate.files.whole.WholeFile;
import java.io.ByteArrayOutputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.UnknownHostException;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileContext;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.UnsupportedFileSystemException;
import org.apache.hadoop.fs.permission.FsPermission;
import org.apache.hadoop.security.AccessControlException;

/** The folder that a run fills, as the driver sees it. */
public final class ResultFolder {

  private static final String MANIFEST = "sweep.manifest";
  private static final String ROWS = "rows";
  private static final String SUMMARY = "summary.csv";
  private static final int LARGEST_MANIFEST = 4096;

  private final String name;
  private final ResultFiles files;
  private final Path folder;

  private ResultFolder(String name, ResultFiles files, Path folder) {
    this.name = name;
    this.files = files;
    this.folder = folder;
  }

  /**
   * A folder by name; nothing is touched yet.
   *
   * @param name the folder, as the user named it: a path, or a URI with its file system
   * @param settings how to reach file systems
   * @return the folder, which need not exist
   * @throws UserError if the name is none, or there is no such file system
   */
  public static ResultFolder named(String name, Configuration settings) {
    try {
      Path path = new Path(name);
      ResultFiles files = ResultFiles.at(path, settings);
      files.exists(path); // an address that the file system does not take shows here
      return new ResultFolder(name, files, files.context().makeQualified(path));
    } catch (RuntimeException | IOException bad) {
      // Hadoop wraps what a file system throws when it is opened
      throw UserError.file(name, "cannot be a folder for results: " + why(root(bad)), bad);
    }
  }

  /**
   * What the folder is being filled with.
   *
   * @return the manifest; empty if nothing was begun
   * @throws UserError if something else is there
   */
  public Optional<Manifest> begun() {
    try {
      FileContext context = files.context();
      if (!files.exists(folder)) {
        return Optional.empty();
      }
      if (!context.getFileStatus(folder).isDirectory()) {
        throw UserError.file(name, "cannot be a folder for results: it is a file");
      }
      Path manifest = new Path(folder, MANIFEST);
      if (files.exists(manifest)) {
        return Optional.of(
            Manifest.read(lines(manifest))
                .orElseThrow(
                    () -> UserError.file(name, "cannot be gone on with: its manifest is damaged")));
      }
      if (!names(folder).stream().allMatch(there -> there.startsWith(ResultFiles.DRAFT))) {
        throw UserError.file(
            name, "cannot be a folder for results: there are other things in it; name a new one");
      }
      return Optional.empty();
    } catch (IOException failed) {
      throw unreadable(failed);
    }
  }

  private List<String> names(Path there) throws IOException {
    return Stream.of(files.context().util().listStatus(there))
        .map(file -> file.getPath().getName())
        .toList();
  }

  private List<String> lines(Path manifest) throws IOException {
    try (InputStream in = files.context().open(manifest)) {
      return new String(in.readNBytes(LARGEST_MANIFEST), UTF_8).lines().toList();
    }
  }

  /**
   * Begins to fill the folder, or goes on.
   *
   * @param manifest what with
   * @return where its portions go
   * @throws UserError if the folder is filled with something else, or cannot be written
   */
  public PortionPlaces begin(Manifest manifest) {
    try {
      Path rows = new Path(folder, ROWS);
      if (begun().isEmpty()) {
        files.context().mkdir(folder, FsPermission.getDirDefault(), true);
        String text = String.join("\n", manifest.lines()) + "\n";
        files.place(new Path(folder, MANIFEST), out -> out.write(text.getBytes(UTF_8)));
      }
      // whoever was quicker decides
      check(manifest);
      files.context().mkdir(rows, FsPermission.getDirDefault(), true);
      return new PortionPlaces(rows.toString(), manifest.fingerprint());
    } catch (IOException failed) {
      throw unwritable(failed);
    }
  }

  /**
   * Holds what is to be flown against what was begun.
   *
   * @param asked what is to be flown
   * @throws UserError if something else was begun
   */
  public void check(Manifest asked) {
    Optional<Manifest> begun = begun();
    if (begun.isEmpty() || begun.get().equals(asked)) {
      return;
    }
    throw UserError.file(
        name,
        "holds another sweep: that one "
            + Difference.between(begun.get().lines(), asked.lines()).orElseThrow()
            + "; name another folder, or remove that one");
  }

  /**
   * Which portions are whole.
   *
   * @param places where the portions go
   * @return their numbers
   * @throws UserError if the folder cannot be read
   */
  public BitSet whole(PortionPlaces places) {
    BitSet whole = new BitSet();
    try {
      names(new Path(places.folder())).forEach(there -> places.number(there).ifPresent(whole::set));
      return whole;
    } catch (IOException failed) {
      throw unreadable(failed);
    }
  }

  /**
   * Removes the drafts that killed tasks left behind. One that is still being written is given up
   * by its task, whose portion is whole by then.
   *
   * @param places where the portions went
   * @throws UserError if the folder cannot be written
   */
  public void removeDrafts(PortionPlaces places) {
    try {
      Path rows = new Path(places.folder());
      for (String there : names(rows)) {
        if (there.startsWith(ResultFiles.DRAFT)) {
          files.context().delete(new Path(rows, there), false);
        }
      }
    } catch (IOException failed) {
      throw unwritable(failed);
    }
  }

  /**
   * Puts the summary in its place, or a new one there, and where it comes from beside it.
   *
   * @param content the summary
   * @param provenance where the rows come from
   * @throws UserError if it cannot be written
   */
  public void summary(WholeFile.Content content, Provenance provenance) {
    try {
      ByteArrayOutputStream written = new ByteArrayOutputStream();
      content.writeTo(written);
      replace(SUMMARY, out -> out.write(written.toByteArray()));
      String digest = Digest.of(written.toByteArray());
      replace(Sidecar.name(SUMMARY), out -> Sidecar.write(SUMMARY, digest, provenance, out));
    } catch (IOException failed) {
      throw unwritable(failed);
    }
  }

  private void replace(String last, WholeFile.Content content) throws IOException {
    Path place = new Path(folder, last);
    files.context().delete(place, false);
    files.place(place, content);
  }

  private UserError unreadable(IOException failed) {
    return UserError.file(name, "cannot be read: " + why(failed), failed);
  }

  private UserError unwritable(IOException failed) {
    return UserError.file(name, "cannot be written: " + why(failed), failed);
  }

  private static Throwable root(Throwable failed) {
    return failed.getCause() == null ? failed : root(failed.getCause());
  }

  private static String why(Throwable failed) {
    if (failed instanceof UnsupportedFileSystemException
        || failed instanceof ClassNotFoundException) {
      return "no file system of this kind is known here";
    }
    if (failed instanceof UnknownHostException) {
      return "there is no host " + failed.getMessage();
    }
    if (failed instanceof AccessControlException) {
      return "permission denied";
    }
    if (failed instanceof FileNotFoundException) {
      return "there is no such folder";
    }
    return String.valueOf(failed.getMessage()).lines().findFirst().orElse("unknown");
  }
}
