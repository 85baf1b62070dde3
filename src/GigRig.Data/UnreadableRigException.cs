using GigRig.Domain.Rigs;

namespace GigRig.Data;

/// <summary>A stored rig does not read as one any more: somebody else wrote to the database, or a fault of ours. The rest of the library is not touched by it.</summary>
public sealed class UnreadableRigException : Exception
{
    internal UnreadableRigException(string title, Complaint complaint)
        : base($"The stored {title} can't be read: {complaint.Message} Delete it, or put a copy of the library back.")
    {
    }
}
