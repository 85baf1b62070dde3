namespace GigRig.Data.Owners;

/// <summary>Whose library is read and written. One to a service provider; there is one local owner for now.</summary>
internal sealed record OwnerContext
{
    public OwnerContext(Guid ownerId)
    {
        if (ownerId == Guid.Empty)
            throw new ArgumentException("An owner needs an id that is not empty.", nameof(ownerId));
        OwnerId = ownerId;
    }

    /// <summary>The one who runs the app on their own machine.</summary>
    public static OwnerContext Local { get; } = new(new Guid("6f0e7a52-5b0a-4d0e-9a51-3c1f1d6b8a01"));

    public Guid OwnerId { get; }
}
