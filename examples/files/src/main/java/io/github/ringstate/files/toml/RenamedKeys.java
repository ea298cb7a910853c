package io.github.ringstate.files.toml;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.ringstate.files.error.UserError;
import java.util.Map;

/**
 * Keys of saved files that have another name now. They are still read, as if they had the new one;
 * {@link TomlDocument#notices} says which they are.
 *
 * @param names for each old name of a key in a table its new one; no new name is an old one
 */
public record RenamedKeys(Map<String, String> names) {

  /** Every key has its name. */
  public static final RenamedKeys NONE = new RenamedKeys(Map.of());

  /** The names that numbers of a craft and of the pilots had in version 0.1.0. */
  public static final RenamedKeys SINCE_0_1_0 =
      new RenamedKeys(
          Map.ofEntries(
              Map.entry("power_loss", "transmission_and_tail_rotor_power"),
              Map.entry("short_time_power_kw", "take_off_power_kw"),
              Map.entry("least_mass_kg", "minimum_mass_kg"),
              Map.entry("greatest_mass_kg", "maximum_mass_kg"),
              Map.entry("least_collective_deg", "minimum_collective_deg"),
              Map.entry("greatest_collective_deg", "maximum_collective_deg"),
              Map.entry("least_mass_flow", "minimum_mass_flow"),
              Map.entry("collective_speed_deg_per_s", "collective_rate_deg_per_s"),
              Map.entry("bank_speed_deg_per_s", "bank_rate_deg_per_s"),
              Map.entry("greatest_drift_bank_rad", "maximum_drift_bank_rad")));

  /** Copies the names. */
  public RenamedKeys {
    names = Map.copyOf(names);
  }

  /**
   * A document whose keys have their new names, in the order in which they stand.
   *
   * @param file the file's name, for messages
   * @param tree the document as it was written
   * @return the document
   * @throws UserError if a table has a key under both names
   */
  JsonNode applied(String file, JsonNode tree) {
    if (!tree.isObject()) {
      return tree;
    }
    ObjectNode renamed = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> field : tree.properties()) {
      renamed.set(field.getKey(), table(file, field.getKey(), field.getValue()));
    }
    return renamed;
  }

  /** Whether a statement may hold a key; a key in quotation marks may be written in escapes. */
  boolean mayHold(String statement, String key) {
    return statement.contains(key)
        || statement.indexOf('\\') >= 0
        || names.entrySet().stream()
            .anyMatch(name -> name.getValue().equals(key) && statement.contains(name.getKey()));
  }

  private JsonNode table(String file, String name, JsonNode table) {
    if (!table.isObject()) {
      return table;
    }
    ObjectNode renamed = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> field : table.properties()) {
      String old = field.getKey();
      String key = names.getOrDefault(old, old);
      if (!key.equals(old) && table.has(key)) {
        throw UserError.line(
            file,
            0,
            name
                + "."
                + old
                + " is the old name of "
                + key
                + ", which is set too"
                + UserError.ALLOWED
                + "one of them");
      }
      renamed.set(key, field.getValue());
    }
    return renamed;
  }
}
