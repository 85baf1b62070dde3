using GigRig.Domain.Gear;

namespace GigRig.Domain.Geometry;

/// <summary>A jack and where a lead leaves it.</summary>
/// <param name="Tip">The middle of the outer edge of its plug; for a top jack, the jack itself: <see cref="Jack.At"/> from the left, halfway back.</param>
public sealed record PlacedJack(Jack Jack, Point Tip);
