package io.github.ringstate.files.plan;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.Texts;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is planned and briefed for a flight. Nothing in it is computed; what is not settled is an
 * empty text.
 *
 * @param facts who, where and when, by key
 * @param crew the names of the crew
 * @param technique the recovery chosen, by its name
 * @param options options of the tool by table and name, without their hyphens in front
 * @param agreed heights that the crew agreed on, ft above the ground, by key
 * @param revision the model's revision with which the plan was written
 */
public record PlanFile(
    Map<Fact, String> facts,
    List<String> crew,
    String technique,
    Map<Part, Map<String, String>> options,
    Map<AgreedHeight, Double> agreed,
    String revision) {

  /** More than any plan fills, comments included; a bound for what is read by mistake. */
  private static final int LARGEST = 65_536;

  /** What a plan says of the flight in words of the user's. */
  public enum Fact {
    /** Where it is flown. */
    PLACE("place", "Place"),
    /** When. */
    DATE("date", "Date"),
    /** In which craft. */
    REGISTRATION("registration", "Registration");

    private final String key;
    private final String title;

    Fact(String key, String title) {
      this.key = key;
      this.title = title;
    }

    /**
     * Its key in a file.
     *
     * @return one word
     */
    public String key() {
      return key;
    }

    /**
     * Its name for people.
     *
     * @return one word
     */
    public String title() {
      return title;
    }
  }

  /** Parts of a plan that hold options of the tool. */
  public enum Part {
    /** Craft, mass and air, which all commands share. */
    CONDITIONS("conditions"),
    /** How the ring state is met, and by whom. */
    ENCOUNTER("encounter"),
    /** A slow run. */
    RUN("run");

    private final String key;

    Part(String key) {
      this.key = key;
    }

    /**
     * Its table in a file.
     *
     * @return one word
     */
    public String key() {
      return key;
    }
  }

  /** Heights that a crew agrees on, above the ground. */
  public enum AgreedHeight {
    /** Not to be flown below. */
    LEAST("least_height_ft", "not below"),
    /** At which a demonstration begins. */
    START("start_height_ft", "demonstration begins at"),
    /** At which a demonstration is broken off. */
    ABORT("abort_height_ft", "demonstration broken off at");

    private final String key;
    private final String title;

    AgreedHeight(String key, String title) {
      this.key = key;
      this.title = title;
    }

    /**
     * Its key in a file.
     *
     * @return the height's name with its unit
     */
    public String key() {
      return key;
    }

    /**
     * Its name for people.
     *
     * @return a few words
     */
    public String title() {
      return title;
    }
  }

  /** Copies lists and maps; the order of options is kept. */
  public PlanFile {
    facts = Map.copyOf(facts);
    crew = List.copyOf(crew);
    agreed = Map.copyOf(agreed);
    Map<Part, Map<String, String>> kept = new LinkedHashMap<>();
    options.forEach(
        (part, values) -> kept.put(part, Collections.unmodifiableMap(new LinkedHashMap<>(values))));
    options = Collections.unmodifiableMap(kept);
  }

  /**
   * Reads a plan.
   *
   * @param name the file, as the user named it
   * @param texts where its text comes from
   * @return what it holds
   * @throws UserError if the file cannot be read or holds a bad value
   */
  public static PlanFile read(String name, Texts texts) {
    return PlanReader.read(name, texts.read(name, "a plan", LARGEST));
  }

  /**
   * The options of one part.
   *
   * @param part the part
   * @return the options by name; none if the plan lacks the part
   */
  public Map<String, String> options(Part part) {
    return options.getOrDefault(part, Map.of());
  }
}
