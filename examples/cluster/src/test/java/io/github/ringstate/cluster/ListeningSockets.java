package io.github.ringstate.cluster;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Listening TCP sockets of a process, as Linux shows them (proc(5), /proc/net/tcp). */
final class ListeningSockets {

  private static final String LISTEN = "0A";

  /** 127 is the last byte of the address, which is written with its last byte first. */
  private static final String LOOPBACK = "7F";

  /** ::ffff:127.x.y.z, in four words of four bytes. */
  private static final String MAPPED_LOOPBACK = "0000000000000000FFFF0000......7F";

  private static final String LOOPBACK_6 = "00000000000000000000000001000000";

  private ListeningSockets() {}

  static boolean canBeSeen() {
    return Files.isReadable(Path.of("/proc/self/net/tcp"));
  }

  /** The local addresses of a process's listening sockets, as the system writes them. */
  static Set<String> of(ProcessHandle process) throws IOException {
    Path folder = Path.of("/proc", String.valueOf(process.pid()));
    Set<String> sockets = new HashSet<>();
    try (DirectoryStream<Path> open = Files.newDirectoryStream(folder.resolve("fd"))) {
      for (Path file : open) {
        try {
          sockets.add(Files.readSymbolicLink(file).toString());
        } catch (IOException closed) {
          // closed meanwhile
        }
      }
    }
    Set<String> addresses = new HashSet<>();
    for (String table : List.of("tcp", "tcp6")) {
      for (String line : Files.readAllLines(folder.resolve("net").resolve(table))) {
        String[] words = line.strip().split(" +", -1);
        if (words.length > 9
            && words[3].equals(LISTEN)
            && sockets.contains("socket:[" + words[9] + "]")) {
          addresses.add(words[1].substring(0, words[1].indexOf(':')));
        }
      }
    }
    return addresses;
  }

  static boolean isLoopback(String address) {
    return address.length() == 8
        ? address.endsWith(LOOPBACK)
        : address.matches(MAPPED_LOOPBACK) || address.equals(LOOPBACK_6);
  }
}
