using GigRig.Data.Owners;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace GigRig.Data;

/// <summary>For <c>dotnet ef</c> alone: it needs the model, not a library.</summary>
internal sealed class GigRigDbDesign : IDesignTimeDbContextFactory<GigRigDb>
{
    public GigRigDb CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<GigRigDb>().UseSqlite("Data Source=:memory:").Options, OwnerContext.Local);
}
