namespace GigRig.Data;

/// <summary>What was to be saved or deleted was not, and nothing was written. The message is for the owner: why, and what to do.</summary>
public abstract class NotSavedException : Exception
{
    private protected NotSavedException(string message, Exception? cause = null)
        : base(message, cause)
    {
    }
}
