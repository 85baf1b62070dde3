namespace GigRig.Planning.Fitting;

/// <summary>One thing of a layout: which pose it takes and where the front-left corner of its turned body stands.</summary>
internal readonly record struct Standing(int Item, int Pose, int X, int Y);
