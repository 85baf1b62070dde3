namespace GigRig.Domain.Gear;

/// <summary>A built-in role.</summary>
/// <param name="Title">In plain words, for headings and lists.</param>
/// <param name="Synonyms">What else players call it; for search, lower case.</param>
/// <param name="ChainRank">Where it usually goes between instrument and amp: lower comes earlier. Common practice, no standard; players break it on purpose.</param>
/// <param name="IsTimeEffect">Whether it belongs after the distortion, and so in the amp's loop when the amp makes the distortion.</param>
/// <param name="PluginClass">
/// The class of the LV2 plug-in standard nearest to it, so that the word has an anchor outside this program. Class names are those of the LV2 core ontology
/// (<c>lv2core.ttl</c>, commit 1eccbe4); which role goes with which class is ours.
/// </param>
public sealed record RoleEntry(Role Role, string Title, ValueList<string> Synonyms, int ChainRank, bool IsTimeEffect, string PluginClass);
